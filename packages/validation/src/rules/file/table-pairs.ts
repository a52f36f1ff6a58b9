import type { Complaint, FileRule } from "../../model/rule.ts";
import { cellOf, describedTable } from "../../shared/describedTable.ts";

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
    const names = described.columns.map(({ column }) => column.name);
    const pairs = names.flatMap((smaller) =>
      PAIRS.flatMap(([low, high]) => {
        const larger = smaller.startsWith(low) ? high + smaller.slice(low.length) : "";
        return names.includes(larger) ? [{ smaller, larger }] : [];
      }),
    );
    return table.rows.flatMap((row) =>
      pairs.flatMap(({ smaller, larger }): Complaint[] => {
        const [less, more] = [cellOf(table, row, smaller), cellOf(table, row, larger)];
        if (less === undefined || more === undefined || less.text === "" || more.text === "") return [];
        return Number(less.text) > Number(more.text)
          ? [
              {
                at: more.span,
                message: `"${larger}" is less than "${smaller}"`,
                received: `${more.text}, and ${less.text}`,
                expected: `at least ${less.text}; the two may have changed places`,
              },
            ]
          : [];
      }),
    );
  },
};
