import { expect, it } from "vitest";
import { pathWords } from "./pathWords.ts";

const JOB = {
  chassis: { line: { hertz: 60 } },
  stages: [{ id: "supply", parts: { reservoir: { marked: "20 uF" } } }],
  parts: [{ name: "T1", windings: { hv: { marked: "x" } } }, {}],
  readings: [{ at: "B+" }],
};

it.each([
  [[], "the job"],
  [["chassis", "line", "hertz"], '"hertz" of "line" of "chassis"'],
  [["stages", 0, "parts", "reservoir", "marked"], '"marked" of part "reservoir" of stage "supply"'],
  [["parts", 0, "windings", "hv"], 'winding "hv" of part "T1"'],
  [["parts", 1], "part 2"],
  [["readings", 0, "value"], '"value" of reading 1'],
  [["parts", 1, "between", 0], 'entry 1 of "between" of part 2'],
  [["parts"], '"parts"'],
] as const)("calls %j %s", (path, words) => {
  expect(pathWords(path, JOB)).toBe(words);
});
