import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { settle } from "./settle.ts";

let folder = "";
const said: string[] = [];

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "underchassis-settle-"));
  said.length = 0;
  vi.spyOn(console, "error").mockImplementation((line: string) => void said.push(line));
  vi.spyOn(console, "log").mockImplementation((line: string) => void said.push(line));
});

afterEach(() => {
  vi.restoreAllMocks();
  rmSync(folder, { recursive: true });
});

test("writes what differs and removes what nothing generates, so that a check then passes", () => {
  const file = { path: `${folder}/new.ts`, text: "export {};\n" };
  writeFileSync(join(folder, "old.ts"), "");
  expect(settle([file], folder, false)).toBe(0);
  expect(readFileSync(file.path, "utf8")).toBe(file.text);
  expect(existsSync(join(folder, "old.ts"))).toBe(false);
  expect(settle([file], folder, true)).toBe(0);
});

test("a check fails naming the file and the command, and writes nothing", () => {
  const file = { path: `${folder}/new.ts`, text: "export {};\n" };
  writeFileSync(join(folder, "old.ts"), "");
  writeFileSync(file.path, "export const drifted = 1;\n");
  expect(settle([file], folder, true)).toBe(1);
  expect(said).toEqual([
    `${file.path} is not what the generator writes; run npm run generate`,
    `${folder}/old.ts has nothing to be generated from; run npm run generate`,
  ]);
  expect(readFileSync(file.path, "utf8")).toBe("export const drifted = 1;\n");
});
