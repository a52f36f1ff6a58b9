import type { Complaint, FileRule } from "../../model/rule.ts";
import { describedTable } from "../../shared/describedTable.ts";
import { orderFaults } from "../../shared/rowOrder.ts";

/** Rows stand in the order of their key. */
export const tableOrder: FileRule = {
  code: "UC-508",
  name: "table-order",
  scope: "file",
  of: "table",
  severity: "error",
  title: "Rows are sorted by the key: numbers and choices rise, texts stand together",
  why: "A row has one place, so that two people who add it collide instead of adding it twice.",
  bad: "film,400 below film,630",
  good: "film,400 above film,630",
  fixable: true,
  check(table, collection) {
    const described = describedTable(table, collection);
    if (described === undefined || described.key.length < described.description.key.length) return [];
    const rows = table.rows.map(({ cells }) => cells.map(({ text }) => text));
    return orderFaults(described.key, rows).flatMap(({ row, column, kind }): Complaint[] => {
      if (kind === "repeated") return [];
      const cell = table.rows[row]!.cells[column.at];
      const before = rows[row - 1]?.[column.at] ?? "";
      return [
        {
          ...(cell === undefined ? {} : { at: cell.span }),
          message: kind === "falls" ? `the row should come before "${before}"` : "the row stands apart from the others of its group",
          received: cell?.text ?? "",
          expected: `rows sorted by ${described.key.map(({ column: { name } }) => name).join(", ")}`,
        },
      ];
    });
  },
};
