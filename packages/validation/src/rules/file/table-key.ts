import type { Complaint, FileRule } from "../../model/rule.ts";
import { describedTable } from "../../shared/describedTable.ts";

/** The key tells every row from every other. */
export const tableKey: FileRule = {
  code: "UC-509",
  name: "table-key",
  scope: "file",
  of: "table",
  severity: "error",
  title: "No two rows of a table have the same key",
  why: "Of two rows for one thing, a reader gets one, and nobody knows which.",
  bad: "film,400 twice",
  good: "film,400 once",
  check(table, collection) {
    const described = describedTable(table, collection);
    // What a key is that names no column, nobody knows; tables.json is told of it.
    if (described === undefined || described.key.length < described.description.key.length) return [];
    const lines = new Map<string, number>();
    return table.rows.flatMap(({ cells }, index): Complaint[] => {
      const values = described.key.map(({ at }) => cells[at]?.text ?? "");
      const key = values.join("\u0000");
      const earlier = lines.get(key);
      if (earlier === undefined) {
        lines.set(key, index + 2);
        return [];
      }
      const cell = cells[described.key[0]?.at ?? 0];
      return [
        {
          ...(cell === undefined ? {} : { at: cell.span }),
          message: `the key stands on line ${earlier} already`,
          received: values.join(", "),
          help: "keep one of the two rows",
        },
      ];
    });
  },
};
