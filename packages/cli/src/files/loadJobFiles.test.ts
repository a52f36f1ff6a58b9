import { mkdirSync, mkdtempSync, rmSync, symlinkSync, truncateSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, test } from "vitest";
import { InputError } from "../inputError.ts";
import { loadJobFiles } from "./loadJobFiles.ts";

let folder = "";
const at = (...names: string[]): string => join(folder, ...names);

/** The message and the advice with which a path is refused. */
function refusal(path: string): string {
  try {
    loadJobFiles(path);
  } catch (error) {
    if (error instanceof InputError) return [error.file, error.message, error.help ?? ""].join(" | ");
    throw error;
  }
  throw new Error(`${path} was read`);
}

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "underchassis-job-"));
});

afterEach(() => rmSync(folder, { recursive: true }));

test("reads a folder: job.json and the two lists, without a byte order mark, and nothing else", () => {
  writeFileSync(at("job.json"), "{}");
  writeFileSync(at("parts.csv"), "\ufeffname\nR1 \u03a9\n");
  writeFileSync(at("notes.txt"), "x");
  expect(loadJobFiles(folder)).toEqual({
    job: { name: at("job.json"), text: "{}" },
    parts: { name: at("parts.csv"), text: "name\nR1 \u03a9\n" },
  });
});

test("reads the lists beside job.json, but takes a JSON file of another name alone", () => {
  for (const name of ["job.json", "harbour.json", "readings.csv"]) writeFileSync(at(name), "");
  expect(Object.keys(loadJobFiles(at("job.json")))).toEqual(["job", "readings"]);
  expect(loadJobFiles(at("harbour.json"))).toEqual({ job: { name: at("harbour.json"), text: "" } });
});

test("a missing path names the nearest name beside it", () => {
  mkdirSync(at("harbour-receiver"));
  expect(refusal(at("harbor-receiver"))).toBe(
    `${at("harbor-receiver")} | no such file or folder | the nearest name there is ${at("harbour-receiver")}`,
  );
  expect(refusal(at("zzzzzzzzzzz"))).toBe(`${at("zzzzzzzzzzz")} | no such file or folder | `);
});

test("a folder without job.json names the nearest file, or the job one folder deeper", () => {
  expect(refusal(folder)).toContain("a job folder holds a file called job.json");
  writeFileSync(at("jbo.json"), "{}");
  writeFileSync(at("something-else.json"), "{}");
  expect(refusal(folder)).toContain(`the nearest is ${at("jbo.json")}`);
  mkdirSync(at("inner"));
  writeFileSync(at("inner", "job.json"), "{}");
  expect(refusal(folder)).toContain(`the nearest is ${at("inner", "job.json")}`);
});

test("refuses a file above 5 MB by its size, before reading it", () => {
  writeFileSync(at("job.json"), "");
  truncateSync(at("job.json"), 5_000_001);
  expect(refusal(folder)).toContain("5.0 MB is more than a job can be");
  truncateSync(at("job.json"), 40_000_000_000);
  expect(refusal(folder)).toContain("40000.0 MB");
  truncateSync(at("job.json"), 5_000_000);
  expect(loadJobFiles(folder).job.text).toHaveLength(5_000_000);
});

test("names the line that is not UTF-8", () => {
  writeFileSync(at("job.json"), "{}");
  writeFileSync(at("parts.csv"), Buffer.concat([Buffer.from("name,value\nR1,47k\nR2,4.7 k\u03a9\nR3,"), Buffer.from([0xb5, 0x0a])]));
  expect(refusal(folder)).toContain(`${at("parts.csv")} | line 4 is not UTF-8 text | save it as UTF-8`);
  writeFileSync(at("parts.csv"), Buffer.from("\ufeffname\n", "utf16le"));
  expect(refusal(folder)).toContain("this is UTF-16 text, not UTF-8");
});

test("refuses folders in a file's place, devices and circular links", () => {
  mkdirSync(at("job.json"));
  expect(refusal(at())).toContain("this is a folder, not a file");
  symlinkSync("loop", at("loop"));
  expect(refusal(at("loop"))).toContain("the link leads in a circle");
  if (process.platform !== "win32") expect(refusal("/dev/null")).toContain("this is no ordinary file");
});

test("a list is never passed over in silence: capitals in its name, or a link that leads nowhere", () => {
  writeFileSync(at("job.json"), "{}");
  writeFileSync(at("Parts.CSV"), "name\n");
  expect(refusal(folder)).toBe(`${at("Parts.CSV")} | this table would not be read under this name | name it parts.csv, in small letters`);
  rmSync(at("Parts.CSV"));
  symlinkSync(at("gone.csv"), at("parts.csv"));
  expect(refusal(folder)).toBe(`${at("parts.csv")} | no such file or folder | `);
});

test("a job.json that is a link to nowhere, or only written in capitals", () => {
  symlinkSync(at("gone"), at("job.json"));
  expect(refusal(folder)).toBe(`${at("job.json")} | no such file or folder | `);
  rmSync(at("job.json"));
  writeFileSync(at("Job.JSON"), "{}");
  expect(refusal(folder)).toBe(`${folder} | no job.json in this folder | the nearest is ${at("Job.JSON")}`);
});
