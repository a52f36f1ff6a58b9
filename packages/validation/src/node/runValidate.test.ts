import { mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterEach, beforeEach, expect, it } from "vitest";
import { AT, SOUND_FILES } from "../testing/soundFiles.ts";
import { runValidate } from "./runValidate.ts";

let root = "";

const put = (path: string, text: string): void => {
  mkdirSync(dirname(join(root, path)), { recursive: true });
  writeFileSync(join(root, path), text);
};

beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), "underchassis-validate-"));
  for (const [path, text] of Object.entries(SOUND_FILES)) put(path, text);
});

afterEach(() => rmSync(root, { recursive: true }));

function run(...args: string[]): { code: number; out: string; err: string } {
  let [out, err] = ["", ""];
  const summaryFile = join(root, "summary.md");
  const code = runValidate(args, {
    root,
    cwd: root,
    colour: false,
    summaryFile,
    out: (text) => {
      out += text;
    },
    err: (text) => {
      err += text;
    },
  });
  return { code, out, err };
}

it("exits 0 and says so where nothing is wrong", () => {
  expect(run()).toEqual({ code: 0, out: "nothing found in 11 files; circuits not simulated, which --electrical does\n", err: "" });
});

it("puts the cause first: syntax, shape, references, each with its place", () => {
  put(AT.tube, SOUND_FILES[AT.tube].replace('"id": "6x4",\n', '"id": "6x4"\n'));
  put(AT.caution, SOUND_FILES[AT.caution].replace('"rank": 1', '"rank": "1"').replace('["common-practice"]', '["hearsay"]'));
  put(AT.note, SOUND_FILES[AT.note].replace('["common-practice"]', '["hearsay"]'));
  const { code, out, err } = run();
  expect([code, err]).toEqual([1, ""]);
  expect(out).toBe(`error UC-201 datasets/tubes/6x4.json:5:3  no comma between two entries
    4 |   "id": "6x4"
  > 5 |   "names": ["6X4", "EZ90"],
      |   ^^^^^^^
    6 |   "title": "Full-wave vacuum rectifier",
  received: "names"
  expected: a comma before it

error UC-303 datasets/cautions/stored-charge.json:7:11  "rank" is a text
    6 |   "text": "Filter capacitors hold their charge. Measure before touching.",
  > 7 |   "rank": "1",
      |           ^^^
    8 |   "sources": ["hearsay"]
  received: 1
  expected: a whole number

error UC-601 datasets/cautions/stored-charge.json:8:15  no source is called "hearsay"
    7 |   "rank": "1",
  > 8 |   "sources": ["hearsay"]
      |               ^^^^^^^^^
    9 | }
  received: hearsay
  expected: an id of datasets/sources.csv; add a row for a new source

error UC-601 datasets/failure-notes/filter-dry.json:13:15  no source is called "hearsay"
    12 |   "cure": "A new capacitor of the same value.",
  > 13 |   "sources": ["hearsay"]
       |               ^^^^^^^^^
    14 | }
  received: hearsay
  expected: an id of datasets/sources.csv; add a row for a new source

4 errors and 0 warnings in 11 files; circuits not simulated, which --electrical does
`);
});

it("tells of the wanted paths alone, yet knows the other files", () => {
  put(AT.tube, SOUND_FILES[AT.tube].replace('"from-memory"', '"hearsay"'));
  expect(run("datasets/cautions", AT.note)).toMatchObject({ code: 0 });
  expect(run("datasets/tubes")).toMatchObject({ code: 1 });
});

it("mends with --fix what needs no judgement, once", () => {
  put(AT.bands, `\ufeff${SOUND_FILES[AT.bands].replaceAll("\n", "\r\n")}`);
  put(AT.tube, "{ \r\n");
  const first = run("--fix", AT.bands);
  expect(first).toEqual({
    code: 0,
    out: "nothing found in 11 files; circuits not simulated, which --electrical does\n",
    err: `fixed ${AT.bands}\n`,
  });
  expect(readFileSync(join(root, AT.bands), "utf8")).toBe(SOUND_FILES[AT.bands]);
  expect(run("--fix").err).toBe("");
  expect(readFileSync(join(root, AT.tube), "utf8")).toBe("{ \r\n");
});

it("does not follow a link", () => {
  put("secret.json", "{}");
  symlinkSync(join(root, "secret.json"), join(root, "datasets/tubes/6x5.json"));
  const { code, out } = run();
  expect(code).toBe(1);
  expect(out).toContain("error UC-101 datasets/tubes/6x5.json  the file is a symbolic link");
});

it("writes every format, and the job summary with GitHub's", () => {
  put(AT.caution, SOUND_FILES[AT.caution].replace('"rank": 1', '"rank": 0'));
  expect(JSON.parse(run("--format", "json").out)).toMatchObject({ errors: 1 });
  expect(JSON.parse(run("--format", "sarif").out)).toMatchObject({ version: "2.1.0" });
  expect(run("--format", "github").out).toMatch(/^::error file=datasets\/cautions\/stored-charge.json,line=7,/);
  expect(readFileSync(join(root, "summary.md"), "utf8")).toContain("| error | UC-305 |");
});

it("simulates with --electrical, and counts apart", () => {
  put(AT.stage, SOUND_FILES[AT.stage].replace('"low": 125', '"low": 150'));
  expect(run()).toMatchObject({ code: 0 });
  const { code, out } = run("--electrical");
  expect(code).toBe(1);
  expect(out).toContain("error UC-709");
  expect(out).toContain("1 circuit simulated, 1 of the findings electrical");
});

it.each([
  [["--format", "xml"], "--format takes"],
  [["--max-problems", "0"], "--max-problems takes"],
  [["--frobnicate"], "frobnicate"],
  [["datasets/nowhere"], "there is no datasets/nowhere"],
  [["/"], "outside datasets/"],
  [["explain", "UC-999"], "no rule has the code"],
])("exits 2 for %j", (args, message) => {
  const { code, out, err } = run(...args);
  expect([code, out]).toEqual([2, ""]);
  expect(err).toContain(message);
});

it("exits 2 where there is no datasets folder", () => {
  rmSync(join(root, "datasets"), { recursive: true });
  expect(run()).toMatchObject({ code: 2 });
});

it("explains a rule", () => {
  expect(run("explain", "UC-406")).toMatchObject({ code: 0, err: "" });
});
