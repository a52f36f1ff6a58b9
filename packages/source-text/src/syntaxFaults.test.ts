import { describe, expect, it } from "vitest";
import { Problems } from "./problems.ts";
import { readJson } from "./readJson.ts";
import { sourceText } from "./sourceText.ts";

const LIMITS = { noun: "record", bytes: 10_000, depth: 40, tokens: 1000, members: 1000, marks: 1000, rows: 1000 };

/** The first thing said of a text. */
function first(text: string) {
  const problems = new Problems();
  readJson(sourceText("record.json", text), LIMITS, problems);
  const [found] = problems.list();
  return found;
}

describe("a file that ends too early", () => {
  it.each([
    ['{\n  "a": [\n    1,', "]", "2 brackets are open, the last of line 2"],
    ['{\n  "a": {\n    "b": 1,\n', "}", "2 brackets are open, the last of line 2"],
    ['{ "a": "}]",\n', "}", "one bracket is open, of line 1"],
  ])("%j lacks %s", (text, bracket, help) => {
    expect(first(text)).toMatchObject({ code: "bracket-unclosed", message: `the file ends before a closing ${bracket}`, help });
  });
});

it.each([
  ['{ "low": 0,0048 }', "0.0048"],
  ['{ "low": -12,5e-3, "b": 1 }', "-12.5e-3"],
])("%s has a comma for a point", (text, nearest) => {
  expect(first(text)).toMatchObject({ code: "decimal-comma", nearest, line: 1, column: 10, length: nearest.length });
});

it.each([
  ['[1,2, "a"]', undefined],
  ['{ "a": 1, 2 }', "name-missing"],
])("%s has none", (text, code) => expect(first(text)?.code).toBe(code));

it.each([
  ["0245", "245"],
  [".5", "0.5"],
  ["+5", "5"],
  ["0xF5", "245"],
  ["47k", '"47k"'],
])("%s is written %s", (word, nearest) => expect(first(`{ "a": ${word} }`)).toMatchObject({ code: "number-malformed", nearest }));

it.each(["NaN", "Infinity", "None", "undefined"])("JSON has no %s", (word) => {
  expect(first(`{ "a": ${word} }`)).toMatchObject({ message: `JSON has no ${word}`, column: 8, length: word.length });
  expect(first(`{ "a": ${word} }`)?.nearest).toBeUndefined();
});

it.each(["<<<<<<< ours", "=======", ">>>>>>> theirs"])("%s is left over from a merge", (mark) => {
  expect(first(`{\n${mark}\n"a": 1 }`)).toMatchObject({ code: "merge-mark", line: 2, column: 1, length: 7 });
});
