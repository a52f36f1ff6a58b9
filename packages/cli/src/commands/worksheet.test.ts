import { cpSync, existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { runCli } from "../runCli.ts";

let folder = "";
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "underchassis-worksheet-"));
});
afterEach(() => rmSync(folder, { recursive: true }));

async function run(...args: string[]): Promise<{ code: number; out: string; err: string }> {
  const said = { out: "", err: "" };
  const code = await runCli(args, {
    out: (text) => {
      said.out += text;
    },
    err: (text) => {
      said.err += text;
    },
    colour: { out: false, err: false },
    columns: undefined,
  });
  return { code, ...said };
}

interface Report {
  stages: { id: string; parts: { marked?: string; measured?: string; title: string }[] }[];
  readings: { at: string; measured: number; quantity: string; verdict: string; life: string }[];
  warnings: { message: string; file: string; line: number }[];
}

const graded = async (path: string): Promise<Report> => {
  const { out, code } = await run("grade", path, "--format", "json");
  expect([0, 1]).toContain(code);
  return JSON.parse(out) as Report;
};

/** Puts a text into the cell of a column, in the row that begins so. */
function fill(file: string, start: string, column: string, text: string): void {
  const path = join(folder, "form", file);
  const [head = "", ...rows] = readFileSync(path, "utf8").split("\n");
  const place = head.split(",").indexOf(column);
  const index = rows.findIndex((row) => row.startsWith(start));
  if (place < 0 || index < 0) throw new Error(`${file}: no ${column} in a row "${start}"`);
  // Notes, which may be quoted, stand last: no cell before the last one holds a comma.
  const cells = rows[index]!.split(",");
  cells[place] = text;
  rows[index] = cells.join(",");
  writeFileSync(path, [head, ...rows].join("\n"));
}

describe("the forms", () => {
  it("of a template can be filled in and graded as they are", async () => {
    const { code, err } = await run("worksheet", "decoupling-section", "--format", "csv", "--out", join(folder, "form"));
    expect({ code, files: err.match(/wrote/g)?.length }).toEqual({ code: 0, files: 3 });
    fill("parts.csv", "decoupling-section,droppingResistor", "marked", "12k 1W 10%");
    fill("parts.csv", "decoupling-section,droppingResistor", "measured", "12.3k");
    fill("parts.csv", "decoupling-section,decouplingCapacitor", "leakage", "20 uA");
    fill("readings.csv", "decoupled,chassis,dc-volts,operating", "value", "239 V");
    const report = await graded(join(folder, "form"));
    const parts = report.stages.find(({ id }) => id === "decoupling-section")?.parts;
    expect(parts?.[0]).toMatchObject({ marked: "12k 1W 10%", measured: expect.stringContaining("12.3k") });
    expect(parts?.[1]?.measured).toContain("20 uA");
    // 300 V less 5 mA through 12.3 kohm is 238.5 V (Ohm's law).
    expect(report.readings).toEqual([expect.objectContaining({ at: "decoupled", measured: 239, verdict: "within", life: "found" })]);
  });

  it("count what is left blank as not taken, and say so once", async () => {
    await run("worksheet", "decoupling-section", "--format", "csv", "--out", join(folder, "form"));
    const report = await graded(join(folder, "form"));
    expect(report.readings).toEqual([]);
    const blank = report.warnings.filter(({ message }) => message.includes("count as not taken"));
    expect(blank).toMatchObject([{ file: expect.stringContaining("readings.csv"), line: 2 }]);
  });

  it("of a job keep what it has, and ask for the rest", async () => {
    const job = join(folder, "job");
    cpSync("datasets/jobs/tide-hut-transmitter", job, { recursive: true });
    const before = await graded(job);
    expect((await run("worksheet", "--job", job, "--format", "csv", "--out", join(folder, "form"))).code).toBe(0);
    const after = await graded(join(folder, "form"));
    const told = ({ stages, readings }: Report) => ({
      stages: stages.map(({ id, parts }) => [id, parts.length]),
      readings: readings.map(({ at, measured }) => [at, measured]),
    });
    expect(told(after)).toEqual(told(before));
    const rows = (file: string, path: string) => readFileSync(join(path, file), "utf8").trim().split("\n").length;
    expect(rows("readings.csv", join(folder, "form"))).toBeGreaterThan(rows("readings.csv", job));
  });

  it("write over nothing", async () => {
    mkdirSync(join(folder, "form"));
    writeFileSync(join(folder, "form/parts.csv"), "mine");
    const { code, err } = await run("worksheet", "decoupling-section", "--format", "csv", "--out", join(folder, "form"));
    expect({ code, err }).toEqual({ code: 2, err: expect.stringContaining("not written over") });
    expect(existsSync(join(folder, "form/job.json"))).toBe(false);
    expect(readFileSync(join(folder, "form/parts.csv"), "utf8")).toBe("mine");
  });
});

describe("the sheet", () => {
  it.each([
    ["sheet.html", "<!doctype html>"],
    ["sheet.md", "# Bench sheet: Decoupling section"],
    ["sheet.txt", "Bench sheet: Decoupling section"],
    ["sheet.json", "{"],
  ])("is written as %s asks", async (name, start) => {
    expect((await run("worksheet", "decoupling-section", "--out", join(folder, name))).code).toBe(0);
    expect(readFileSync(join(folder, name), "utf8").startsWith(start)).toBe(true);
  });

  it.each([
    [["worksheet", "decoupling-sektion"], "the nearest is decoupling-section"],
    [["worksheet"], "stage templates or --job"],
    [["worksheet", "decoupling-section", "--job", "x"], "stage templates or --job"],
    [["worksheet", "decoupling-section", "--format", "csv"], "they need a folder"],
    [["worksheet", "decoupling-section", "--out", "x.pdf"], "no sheet is written as .pdf"],
    [["worksheet", "--job", "no-such-folder"], "no such file or folder"],
  ])("%j is refused", async (args, message) => {
    const { code, err, out } = await run(...args);
    expect({ code, out }).toEqual({ code: 2, out: "" });
    expect(err).toContain(message);
  });

  it("of a job does not take the place of the job's own files", async () => {
    const job = join(folder, "job");
    cpSync("datasets/jobs/lantern-room-receiver", job, { recursive: true });
    const { code, err } = await run("worksheet", "--job", job, "--format", "html", "--out", join(job, "parts.csv"));
    expect({ code, err }).toEqual({ code: 2, err: expect.stringContaining("a file of the job itself") });
  });
});
