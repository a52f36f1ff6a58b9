import type { BytesRule } from "../../model/rule.ts";

/** The last line ends like the others. */
export const finalNewline: BytesRule = {
  code: "UC-108",
  name: "final-newline",
  scope: "bytes",
  severity: "error",
  title: "The last line ends in one line end",
  why: "A row added behind an open last line joins it.",
  bad: "6X4,rectifier",
  good: "6X4,rectifier\\n",
  fixable: true,
  check({ text, source }) {
    if (text === "" || (text.endsWith("\n") && !/\n\r?\n$/.test(text))) return [];
    const end = source().text.trimEnd().length;
    return [
      {
        at: { offset: end, length: 0 },
        message: text.endsWith("\n") ? "blank lines at the end of the file" : "the last line has no line end",
        expected: "one line end behind the last line",
      },
    ];
  },
};
