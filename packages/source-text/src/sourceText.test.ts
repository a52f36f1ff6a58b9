import { expect, it } from "vitest";
import { findLineStarts, positionAt, sourceText } from "./sourceText.ts";

it.each([
  ["", [0]],
  ["a\nb\nc", [0, 2, 4]],
  ["a\r\nb\r\n", [0, 3, 6]],
  ["a\rb\n\rc", [0, 2, 4, 5]],
])("finds where the lines of %j begin", (text, starts) => {
  expect(findLineStarts(text)).toEqual(starts);
});

it("counts lines and columns from one, columns in UTF-16 units", () => {
  const source = sourceText("x", "a\n\u{1F600}b\n");
  expect(positionAt(source, 0)).toEqual({ line: 1, column: 1 });
  expect(positionAt(source, 4)).toEqual({ line: 2, column: 3 });
  expect(positionAt(source, 99)).toEqual({ line: 3, column: 1 });
});

it("does not count a byte order mark", () => {
  const source = sourceText("x", "\uFEFFab");
  expect(source).toMatchObject({ text: "ab", hadByteOrderMark: true });
  expect(positionAt(source, 1)).toEqual({ line: 1, column: 2 });
});
