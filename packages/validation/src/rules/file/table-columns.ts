import { nearestOf, oneOf } from "@underchassis/source-text";
import type { Complaint, FileRule } from "../../model/rule.ts";
import { descriptionOf } from "../../shared/describedTable.ts";

/** Columns are the described ones, in their order. */
export const tableColumns: FileRule = {
  code: "UC-506",
  name: "table-columns",
  scope: "file",
  of: "table",
  severity: "error",
  title: "A table has the columns of its description, in that order, and a source",
  why: "A renamed or moved column puts every figure under another meaning.",
  bad: "ratedVolt,make,source",
  good: "make,ratedVolts,source",
  check(table, collection) {
    const description = descriptionOf(table, collection);
    if (description === undefined) return [];
    const names = description.columns.map(({ name }) => name);
    const [only] = table.header;
    const other = table.header.length === 1 && only !== undefined ? /[;\t|]/.exec(only.text)?.[0] : undefined;
    if (other !== undefined && only !== undefined)
      return [
        {
          at: only.span,
          message: `the cells are parted by ${other === ";" ? "semicolons" : other === "|" ? "strokes" : "tabs"}`,
          expected: "commas",
          help: "a spreadsheet asks for the separator when it saves as CSV",
          rank: -1,
        },
      ];
    const written = table.header.map(({ text }) => text);
    const complaints = table.header.flatMap(({ text, span }, index): Complaint[] => {
      if (!names.includes(text))
        return [
          {
            at: span,
            message: `the column "${text}" is not described`,
            received: text,
            expected: oneOf(names, 30),
            nearest: nearestOf(text, names),
            rank: -1,
          },
        ];
      if (written.indexOf(text) < index) return [{ at: span, message: `the column "${text}" stands twice`, received: text, rank: -1 }];
      return [];
    });
    if (complaints.length > 0) return complaints;
    const missing = names.filter((name) => !written.includes(name));
    const first = table.header[0];
    if (missing.length > 0)
      return [
        { ...(first === undefined ? {} : { at: first.span }), message: `no column ${oneOf(missing)}`, expected: names.join(","), rank: -1 },
      ];
    const moved = table.header.find(({ text }, index) => names[index] !== text);
    if (moved !== undefined)
      return [{ at: moved.span, message: `the column "${moved.text}" stands out of order`, expected: names.join(","), rank: -1 }];
    return names.includes("source")
      ? []
      : [{ ...(first === undefined ? {} : { at: first.span }), message: "no column says where the rows come from", expected: '"source"' }];
  },
};
