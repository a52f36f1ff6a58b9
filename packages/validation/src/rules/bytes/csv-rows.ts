import { isMergeMark } from "@underchassis/source-text";
import type { BytesRule, Complaint } from "../../model/rule.ts";
import { TABLE_LIMITS } from "../../read/recordLimits.ts";

/** The longest cell of today has about a hundred. */
const MOST_CHARACTERS = 500;

/** One row, one line; as many cells as the header. */
export const csvRows: BytesRule = {
  code: "UC-207",
  name: "csv-rows",
  scope: "bytes",
  severity: "error",
  title: "Every row is one line with as many cells as the header, none blank; at most 5000 rows, 500 characters a cell",
  why: "Then row n is line n + 1, for people and for comparisons, and no cell slips under the wrong column.",
  bad: "id,kind\\n6x4",
  good: "id,kind\\n6x4,rectifier",
  kinds: ["table", "sources"],
  check(file) {
    if (!file.utf8 || file.text === "") return [];
    const records = file.rows();
    const width = records[0]?.cells.length ?? 0;
    const beyond = records[TABLE_LIMITS.rows + 1];
    if (beyond !== undefined)
      return [
        {
          at: { offset: beyond.start, length: 1 },
          message: "more rows than a table may have",
          received: String(records.length - 1),
          expected: `at most ${TABLE_LIMITS.rows}`,
        },
      ];
    return records.flatMap(({ cells, start, end }): Complaint[] => {
      const row = file
        .source()
        .text.slice(start, end)
        .replace(/[\r\n]+$/, "");
      const at = { offset: start, length: row.split(/[\r\n]/)[0]?.length ?? 0 };
      // Blank lines at the very end are the last line's matter.
      if (cells.every(({ text }) => text === "") && file.source().text.slice(start).trim() === "") return [];
      if (cells.every(({ text }) => text === "")) return [{ at, message: "a blank row", expected: "no blank rows" }];
      if (/[\r\n]/.test(row)) return [{ at, message: "a cell with a line end in it", expected: "one row, one line" }];
      const long = cells.find(({ text }) => text.length > MOST_CHARACTERS);
      if (long !== undefined)
        return [
          {
            at: long.span,
            message: "a cell too long to be read in a table",
            received: `${long.text.length} characters`,
            expected: `at most ${MOST_CHARACTERS}`,
          },
        ];
      if (cells.length === width) return [];
      if (isMergeMark(row.split(" ")[0] ?? ""))
        return [{ at, message: "a mark of a merge that was not finished", expected: "one of the two versions, without the three marks" }];
      return [
        {
          at,
          message: cells.length < width ? "a row with too few cells" : "a row with too many cells",
          received: String(cells.length),
          expected: `${width}, as in the header`,
          help: "a cell that holds a comma stands in quotes",
        },
      ];
    });
  },
};
