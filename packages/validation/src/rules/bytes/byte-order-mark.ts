import type { BytesRule } from "../../model/rule.ts";

/** No byte order mark. */
export const byteOrderMark: BytesRule = {
  code: "UC-106",
  name: "byte-order-mark",
  scope: "bytes",
  severity: "error",
  title: "No file begins with a byte order mark",
  why: "It sticks to the first column's name or brace, and readers of JSON refuse it.",
  bad: "U+FEFF{",
  good: "{",
  fixable: true,
  check: ({ text }) =>
    text.charCodeAt(0) === 0xfeff
      ? [{ at: { offset: 0, length: 0 }, message: "the file begins with a byte order mark", expected: "UTF-8 without one" }]
      : [],
};
