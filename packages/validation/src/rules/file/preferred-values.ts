import { nearestOf } from "@underchassis/source-text";
import type { Complaint, FileRule } from "../../model/rule.ts";
import { cellOf, tableName } from "../../shared/describedTable.ts";
import { SERIES, seriesByRule } from "../../shared/seriesByRule.ts";

/** Preferred values are what IEC 60063 makes them. */
export const preferredValues: FileRule = {
  code: "UC-510",
  name: "preferred-values",
  scope: "file",
  of: "table",
  severity: "error",
  title: "The preferred values follow the rule of their series, with its published exceptions, and are complete",
  why: "A wrong member sends people shopping for a part that nobody makes.",
  bad: "E24,28",
  good: "E24,27",
  check(table) {
    const name = tableName(table);
    if (name === "preferred-series") return factsOf(table);
    if (name !== "preferred-values") return [];
    const found = new Map<string, Set<number>>();
    const complaints = table.rows.flatMap((row): Complaint[] => {
      const [series, value] = [cellOf(table, row, "series"), cellOf(table, row, "value")];
      if (series === undefined || value === undefined || !Object.hasOwn(SERIES, series.text)) return [];
      const values = found.get(series.text) ?? new Set<number>();
      found.set(series.text, values.add(Number(value.text)));
      const rule = seriesByRule(series.text);
      if (rule.includes(Number(value.text))) return [];
      const near = rule.reduce((best, one) => (Math.abs(one - Number(value.text)) < Math.abs(best - Number(value.text)) ? one : best), 1e9);
      return [{ at: value.span, message: `${value.text} is no member of ${series.text}`, received: value.text, expected: String(near) }];
    });
    const lacking = Object.keys(SERIES).flatMap((series): Complaint[] => {
      const missing = seriesByRule(series).filter((value) => found.get(series)?.has(value) !== true);
      return missing.length === 0
        ? []
        : [{ message: `${series} lacks ${missing.length} of its values`, expected: missing.slice(0, 10).join(", ") }];
    });
    // A wrong value is also a missing one: that is said once.
    return complaints.length > 0 ? complaints : lacking;
  },
};

function factsOf(table: Parameters<typeof cellOf>[0]): Complaint[] {
  return table.rows.flatMap((row): Complaint[] => {
    const series = cellOf(table, row, "series");
    const known = series === undefined ? undefined : SERIES[series.text];
    if (series === undefined) return [];
    if (known === undefined)
      return [
        { at: series.span, message: "no series of IEC 60063", received: series.text, nearest: nearestOf(series.text, Object.keys(SERIES)) },
      ];
    return (["members", "figures"] as const).flatMap((column): Complaint[] => {
      const cell = cellOf(table, row, column);
      return cell === undefined || Number(cell.text) === known[column]
        ? []
        : [{ at: cell.span, message: `${series.text} has other ${column}`, received: cell.text, expected: String(known[column]) }];
    });
  });
}
