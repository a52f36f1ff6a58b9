import type { Complaint, FileRule } from "../../model/rule.ts";
import { describedTable } from "../../shared/describedTable.ts";

/** What columns of one quantity are called, the smaller first: `lowVolts` and `highVolts`. */
const PAIRS: readonly (readonly [smaller: string, larger: string])[] = [
  ["low", "high"],
  ["lowest", "highest"],
  ["least", "most"],
  ["from", "to"],
  ["above", "to"],
  ["rated", "surge"],
  ["average", "surge"],
  ["rms", "peak"],
];

/** Of two figures of a row the one that is called the larger is. */
export const tablePairs: FileRule = {
  code: "UC-513",
  name: "table-pairs",
  scope: "file",
  of: "table",
  severity: "error",
  title: "In a row, low lies below high, from below to, a rating below its surge",
  why: "Two cells that changed places look like any other, and every figure that is computed from them is wrong.",
  bad: "lowVolts,highVolts\n126,114",
  good: "lowVolts,highVolts\n114,126",
  check(table, collection) {
    const described = describedTable(table, collection);
    if (described === undefined) return [];
    const { columns } = described;
    const pairs = columns.flatMap((smaller) =>
      PAIRS.flatMap(([low, high]) => {
        const { name } = smaller.column;
        const larger = columns.find(({ column }) => name.startsWith(low) && column.name === high + name.slice(low.length));
        return larger === undefined ? [] : [{ smaller, larger }];
      }),
    );
    return table.rows.flatMap(({ cells }) =>
      pairs.flatMap(({ smaller, larger }): Complaint[] => {
        const [less, more] = [cells[smaller.at], cells[larger.at]];
        if (less === undefined || more === undefined || less.text === "" || more.text === "") return [];
        return Number(less.text) > Number(more.text)
          ? [
              {
                at: more.span,
                message: `"${larger.column.name}" is less than "${smaller.column.name}"`,
                received: `${more.text}, and ${less.text}`,
                expected: `at least ${less.text}; the two may have changed places`,
              },
            ]
          : [];
      }),
    );
  },
};
