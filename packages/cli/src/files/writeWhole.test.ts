import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { writeWhole } from "./writeWhole.ts";

const rename = vi.hoisted(() => ({ fails: false }));
vi.mock("node:fs", async (original) => {
  const real = await original<typeof import("node:fs")>();
  const renameSync: typeof real.renameSync = (from, to) => {
    if (rename.fails) throw Object.assign(new Error("no room"), { code: "ENOSPC" });
    real.renameSync(from, to);
  };
  return { ...real, renameSync };
});

let folder = "";

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "underchassis-write-"));
  rename.fails = false;
});

afterEach(() => rmSync(folder, { recursive: true }));

test("writes a new file and replaces an old one, leaving nothing else behind", () => {
  const path = join(folder, "report.html");
  writeWhole(path, "first, a longer text");
  writeWhole(path, "second");
  expect(readFileSync(path, "utf8")).toBe("second");
  expect(readdirSync(folder)).toEqual(["report.html"]);
});

test("a failure at the last step leaves the old file as it was and no draft", () => {
  const path = join(folder, "report.html");
  writeFileSync(path, "old");
  rename.fails = true;
  expect(() => writeWhole(path, "new")).toThrow("no room left on the disk");
  expect(readFileSync(path, "utf8")).toBe("old");
  expect(readdirSync(folder)).toEqual(["report.html"]);
});

test("refuses a folder, and a file in a folder that does not exist", () => {
  mkdirSync(join(folder, "out"));
  expect(() => writeWhole(join(folder, "out"), "x")).toThrow("this is a folder");
  expect(() => writeWhole(join(folder, "gone", "x"), "x")).toThrow("no such file or folder");
});
