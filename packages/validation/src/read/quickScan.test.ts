import { describe, expect, it } from "vitest";
import { scanText } from "./quickScan.ts";
import { surveyOf } from "./survey.ts";

describe("names in a text", () => {
  /** Whether the text has more names than what was parsed of it: some stand twice. */
  const twice = (text: string): boolean => scanText(text).names !== surveyOf(JSON.parse(text)).names;

  it.each([
    ["a name twice", '{"a": 1, "a": 2}'],
    ["a name twice, once escaped", '{"a": 1, "\\u0061": 2}'],
    ["a name twice, deep down", '{"x": [{"a": 1, "b": {"c": 1, "c": 2}}]}'],
  ])("%s is noticed", (_name, text) => expect(twice(text)).toBe(true));

  it.each([
    ["colons and quote marks in texts", '{"a": "b\\": \\"c\\": ", "d": "\\\\", "e": ":"}'],
    ["blanks before colons", '{"a" : 1, "b"\n:\t2}'],
    ["empty texts", '{"": "", "a": ["", ""]}'],
    ["the same name in two objects", '[{"a": 1}, {"a": 1}]'],
  ])("%s are none twice", (_name, text) => expect(twice(text)).toBe(false));
});

describe("numbers in a text", () => {
  it.each([
    ["in front", "[123456789012345678]"],
    ["behind a name", '{"a": 1, "b": 1.23456789012345678}'],
    ["between others", '["x", 1, 123456789.123456789, 2, "y"]'],
    ["at the end", '["x", 1, 0.12345678901234567890]'],
  ])("one of many figures %s", (_name, text) => expect(scanText(text).longNumber).toBe(true));

  it.each([
    ["seventeen figures", "[12345678901234567]"],
    ["many figures in a text", '{"a": "123456789012345678901234567890"}'],
    ["many short numbers", "[1234567890, 1234567890, 1234567890]"],
  ])("%s are not noticed", (_name, text) => expect(scanText(text).longNumber).toBe(false));
});
