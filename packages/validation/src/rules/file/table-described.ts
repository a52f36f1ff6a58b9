import { nearestOf } from "@underchassis/source-text";
import type { FileRule } from "../../model/rule.ts";
import { descriptionOf } from "../../shared/describedTable.ts";

/** Every table is described. */
export const tableDescribed: FileRule = {
  code: "UC-505",
  name: "table-described",
  scope: "file",
  of: "table",
  severity: "error",
  title: "Every table has its description in tables.json",
  why: "A column without a meaning and a unit is a column of riddles.",
  bad: "datasets/tables/dial-cords.csv alone",
  good: "datasets/tables/dial-cords.csv with its entry in tables.json",
  check(table, collection) {
    if (table.kind !== "table" || collection.descriptions === undefined || descriptionOf(table, collection) !== undefined) return [];
    const file = table.path.slice("datasets/tables/".length);
    return [
      {
        message: "tables.json does not describe this table",
        received: file,
        expected: "an entry with file, title, key and columns",
        nearest: nearestOf(
          file,
          collection.descriptions.tables.map((description) => description.file),
        ),
      },
    ];
  },
};
