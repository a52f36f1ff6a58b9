import type { BytesRule } from "../../model/rule.ts";

/** Lines end in LF. */
export const lineEnds: BytesRule = {
  code: "UC-107",
  name: "line-ends",
  scope: "bytes",
  severity: "error",
  title: "Lines end in LF alone",
  why: "Mixed line ends make every line of a comparison look changed.",
  bad: '"id": "6x4",\\r\\n',
  good: '"id": "6x4",\\n',
  fixable: true,
  check({ text, source }) {
    if (!text.includes("\r")) return [];
    const offset = source().text.indexOf("\r");
    return [{ at: { offset, length: 1 }, message: "a carriage return, the first of the file", expected: "lines that end in LF alone" }];
  },
};
