import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { pathToFileURL } from "node:url";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { findDatasets } from "./findDatasets.ts";
import { loadDataset } from "./load.ts";

let root = "";

const write = (name: string, content: unknown): void => {
  const path = join(root, name);
  mkdirSync(dirname(path), { recursive: true });
  writeFileSync(path, typeof content === "string" ? content : JSON.stringify(content));
};

beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), "underchassis-datasets-"));
  write("manifest.json", { datasetVersion: "1.2.3" });
  write("stages/supply/a.json", { id: "a", title: "First" });
  write("tubes/6v6gt.json", { id: "6v6gt", names: ["6V6GT", "6v6gt/g"] });
  write("cautions/hot.json", { id: "hot" });
  write("failure-notes/leak.json", { id: "leak" });
  write("sources.csv", 'id,kind,title,detail\ncommon-practice,common-practice,"Practice, common",\n');
  write("tables/line-voltages.csv", "country,volts\nA,120\n");
});

afterEach(() => {
  rmSync(root, { recursive: true });
  vi.unstubAllEnvs();
});

test("indexes every record kind", () => {
  const dataset = loadDataset(root);
  expect(dataset.version).toBe("1.2.3");
  expect(dataset.stages.get("a")?.title).toBe("First");
  expect(dataset.tubes.get("6V6GT/G")).toBe(dataset.tubes.get("6V6GT"));
  expect([...dataset.cautions.keys(), ...dataset.failureNotes.keys()]).toEqual(["hot", "leak"]);
  expect(dataset.sources.get("common-practice")?.title).toBe("Practice, common");
  expect(dataset.tables.get("line-voltages")).toEqual([{ country: "A", volts: "120" }]);
});

test("reads rules of thumb and the tables' titles where there are any", () => {
  expect([...loadDataset(root).rulesOfThumb.keys(), ...loadDataset(root).tableTitles]).toEqual([]);
  write("rules-of-thumb/bleeder.json", { id: "bleeder" });
  write("tables/tables.json", { tables: [{ file: "markings/letters.csv", title: "Letters" }, { file: "untitled.csv" }] });
  const { rulesOfThumb, tableTitles } = loadDataset(root);
  expect([...rulesOfThumb.keys()]).toEqual(["bleeder"]);
  expect(tableTitles).toEqual([{ name: "letters", title: "Letters" }]);
});

test("leaves rows and sources out when they are not wanted, broken ones included", () => {
  write("tables/ragged.csv", "a,b\n1\n");
  const dataset = loadDataset(root, { rows: false });
  expect([dataset.tables.size, dataset.sources.size]).toEqual([0, 0]);
  expect(dataset.stages.get("a")?.title).toBe("First");
});

test("names the file that is not JSON", () => {
  write("cautions/broken.json", "{");
  expect(() => loadDataset(root)).toThrow(join(root, "cautions", "broken.json"));
});

test("names both files that claim one tube name, whatever its case", () => {
  write("tubes/other.json", { id: "other", names: ["6v6GT"] });
  expect(() => loadDataset(root)).toThrow(/other\.json: tube "6V6GT" is already described in .*6v6gt\.json/);
});

test("names the table whose rows do not match its header", () => {
  write("tables/ragged.csv", "a,b\n1\n");
  expect(() => loadDataset(root)).toThrow(/ragged\.csv: .*line 2/);
});

test("reads tables in a folder of their own, and refuses a name that stands twice", () => {
  write("tables/markings/letters.csv", "letter\nK\n");
  expect(loadDataset(root).tables.get("letters")).toEqual([{ letter: "K" }]);
  write("tables/letters.csv", "letter\nM\n");
  expect(() => loadDataset(root)).toThrow(/letters\.csv: there is a table of this name/);
});

test("names the folder that is missing", () => {
  rmSync(join(root, "tubes"), { recursive: true });
  expect(() => loadDataset(root)).toThrow(join(root, "tubes"));
});

test("refuses a source without a title", () => {
  write("sources.csv", "id,kind,title,detail\nx,published,,\n");
  expect(() => loadDataset(root)).toThrow(/sources\.csv: source "x"/);
});

test.each([
  ["[]", "no id"],
  ["null", "no id"],
  ['{"id":"x"}', "no list of names"],
])("refuses a tube file that holds %s", (text, complaint) => {
  write("tubes/odd.json", text);
  expect(() => loadDataset(root)).toThrow(new RegExp(`odd\\.json: .*${complaint}`));
});

test("finds the folder above the running code, and lets the environment name another", () => {
  write("home/datasets/manifest.json", "{}");
  const code = pathToFileURL(join(root, "home", "packages", "x", "dist", "main.js")).href;
  expect(findDatasets(code)).toBe(join(root, "home", "datasets"));
  vi.stubEnv("UNDERCHASSIS_DATASETS", root);
  expect(findDatasets(code)).toBe(root);
  vi.stubEnv("UNDERCHASSIS_DATASETS", join(root, "nowhere"));
  expect(() => findDatasets(code)).toThrow("nowhere");
});

test("says so when no folder above holds a manifest", () => {
  vi.stubEnv("UNDERCHASSIS_DATASETS", "");
  expect(() => findDatasets(pathToFileURL(join(root, "empty", "main.js")).href)).toThrow("no datasets/manifest.json");
});
