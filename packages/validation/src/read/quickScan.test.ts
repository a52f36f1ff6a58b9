import { expect, it } from "vitest";
import { needsCloseReading } from "./quickScan.ts";

const close = (text: string): boolean => needsCloseReading(text, JSON.parse(text));

it.each([
  ["a name twice", '{"a": 1, "a": 2}'],
  ["a name twice, once escaped", '{"a": 1, "\\u0061": 2}'],
  ["a name twice, deep down", '{"x": [{"a": 1, "b": {"c": 1, "c": 2}}]}'],
  ["a name that reaches into objects", '{"__proto__": {"a": 1}}'],
  ["a number beyond all bounds", "[1e999]"],
  ["nesting without end", `${"[".repeat(50)}${"]".repeat(50)}`],
])("looks closer at %s", (_name, text) => expect(close(text)).toBe(true));

it.each([
  ["colons and quote marks in texts", '{"a": "b\\": \\"c\\": ", "d": "\\\\", "e": ":"}'],
  ["blanks before colons", '{"a" : 1, "b"\n:\t2}'],
  ["empty texts", '{"": "", "a": ["", ""]}'],
  ["the same name in two objects", '[{"a": 1}, {"a": 1}]'],
])("is content with %s", (_name, text) => expect(close(text)).toBe(false));
