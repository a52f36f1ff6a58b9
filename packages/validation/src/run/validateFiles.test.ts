import { expect, it } from "vitest";
import type { BytesRule, RecordRule } from "../model/rule.ts";
import { memorySource } from "../testing/memorySource.ts";
import { AT, SOUND_FILES } from "../testing/soundFiles.ts";
import { validateFiles } from "./validateFiles.ts";

const facts = { severity: "error", title: "t", why: "w", bad: "b", good: "g" } as const;

it("makes a rule that throws a finding of that rule, and goes on", () => {
  const thrower: RecordRule = {
    ...facts,
    code: "UC-499",
    name: "thrower",
    scope: "record",
    kinds: ["tube"],
    check: () => {
      throw new Error("oops");
    },
  };
  const other: BytesRule = { ...facts, code: "UC-199", name: "other", scope: "bytes", kinds: ["tube"], check: () => [{ message: "seen" }] };
  const { diagnostics } = validateFiles(memorySource(SOUND_FILES), { rules: [thrower, other] });
  expect(diagnostics.map(({ code, file, message }) => [code, file, message])).toEqual([
    ["UC-199", AT.tube, "seen"],
    ["UC-901", AT.tube, "the rule UC-499 (thrower) failed: oops"],
  ]);
});

it("blames the rule that points outside its file", () => {
  const astray: BytesRule = {
    ...facts,
    code: "UC-199",
    name: "astray",
    scope: "bytes",
    kinds: ["tube"],
    check: () => [{ at: { line: 999, column: 1, length: 1 }, message: "there" }],
  };
  const { diagnostics } = validateFiles(memorySource(SOUND_FILES), { rules: [astray] });
  expect(diagnostics).toMatchObject([{ code: "UC-901", message: expect.stringContaining("outside") }]);
});

it("tells of a file that cannot be read, and reads the others", () => {
  const source = memorySource(SOUND_FILES);
  const broken = { list: source.list, read: (path: string) => (path === AT.tube ? fail() : source.read(path)) };
  const { diagnostics, files } = validateFiles(broken, { rules: [] });
  expect(diagnostics).toMatchObject([{ code: "UC-902", file: AT.tube, message: "the file cannot be read: no permission" }]);
  expect(files).toBe(Object.keys(SOUND_FILES).length);
});

function fail(): never {
  throw new Error("no permission");
}
