import { sourceText } from "@underchassis/source-text";
import { expect, it } from "vitest";
import { Locator } from "./locate.ts";

const TEXT = '{\n  "a": "x \\"y\\" \\u00e9 z",\n  "list": [\n    { "b": 1 }\n  ]\n}\n';
const locator = new Locator(sourceText("t.json", TEXT));
const at = (...place: Parameters<Locator["positionOf"]>) => Object.values(locator.positionOf(...place));

it("finds values and names", () => {
  expect(at({ path: ["list", 0, "b"] })).toEqual([4, 12, 4, 13]);
  expect(at({ path: ["list", 0, "b"], part: "key" })).toEqual([4, 7, 4, 10]);
});

it("points at the first line of what has many", () => expect(at({ path: ["list"] })).toEqual([3, 11, 3, 12]));

it("counts an escape inside a text as the character that it stands for", () => {
  // x "y" é z: y is the fourth character, z the ninth.
  expect(at({ path: ["a"], within: { offset: 3, length: 1 } })).toEqual([2, 13, 2, 14]);
  expect(at({ path: ["a"], within: { offset: 8, length: 1 } })).toEqual([2, 24, 2, 25]);
});

it("refuses a stretch outside the file", () => {
  expect(() => at({ offset: TEXT.length, length: 1 })).toThrow("outside");
  expect(() => at({ line: 99, column: 1, length: 1 })).toThrow("outside");
});
