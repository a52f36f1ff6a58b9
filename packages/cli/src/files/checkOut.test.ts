import { mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, relative } from "node:path";
import { cwd } from "node:process";
import { afterEach, beforeEach, expect, test } from "vitest";
import { InputError } from "../inputError.ts";
import { checkOut } from "./checkOut.ts";

let folder = "";
const at = (name: string): string => join(folder, name);
const files = () => ({ job: { name: at("job.json"), text: "{}" }, parts: { name: at("parts.csv"), text: "name\n" } });

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "underchassis-out-"));
  writeFileSync(at("job.json"), "{}");
  writeFileSync(at("parts.csv"), "name\n");
});

afterEach(() => rmSync(folder, { recursive: true }));

test.each(["job.json", "parts.csv", "readings.csv"])("a report never takes the place of %s", (name) => {
  expect(() => checkOut(at(name), files())).toThrow(InputError);
  expect(() => checkOut(relative(cwd(), at(name)), files())).toThrow("a file of the job itself");
});

test("nor through a link", () => {
  symlinkSync(at("job.json"), at("report.html"));
  expect(() => checkOut(at("report.html"), files())).toThrow("a file of the job itself");
  expect(readFileSync(at("job.json"), "utf8")).toBe("{}");
});

test("a folder that is not there, and an empty name, are told before the work", () => {
  expect(() => checkOut(at("gone/report.html"), files())).toThrow(`there is no folder ${at("gone")}`);
  expect(() => checkOut("", files())).toThrow("no name of a file");
});

test("any other name is free", () => {
  for (const name of ["report.html", "report.json"]) expect(() => checkOut(at(name), files())).not.toThrow();
});
