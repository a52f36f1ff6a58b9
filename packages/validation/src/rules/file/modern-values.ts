import { nearestPreferred, type SeriesName } from "@underchassis/calc";
import type { Complaint, FileRule } from "../../model/rule.ts";
import { cellOf, tableName } from "../../shared/describedTable.ts";

interface Derived {
  old: string;
  value: string;
  percent: string;
  series: SeriesName;
  up?: true;
}

/** Tables that give the modern value for an old one: which columns follow from which. */
const TABLES: Readonly<Record<string, readonly Derived[]>> = {
  "historic-resistors": [
    { old: "oldFigures", value: "e24Figures", percent: "e24Percent", series: "E24" },
    { old: "oldFigures", value: "e12Figures", percent: "e12Percent", series: "E12" },
  ],
  "historic-paper-mica": [
    { old: "oldFigures", value: "e12Figures", percent: "e12Percent", series: "E12" },
    { old: "oldFigures", value: "e24Figures", percent: "e24Percent", series: "E24" },
  ],
  "historic-electrolytics": [
    { old: "oldMicrofarads", value: "e12Microfarads", percent: "e12Percent", series: "E12" },
    { old: "oldMicrofarads", value: "e6UpMicrofarads", percent: "e6UpPercent", series: "E6", up: true },
  ],
};

/** Modern values of old ones are the nearest that are made, and the deviation beside them is theirs. */
export const modernValues: FileRule = {
  code: "UC-511",
  name: "modern-values",
  scope: "file",
  of: "table",
  severity: "error",
  title: "The modern value of an old one is the nearest of its series, and its deviation is worked out right",
  why: "People order by these columns.",
  bad: "25,27,8,... for E12 of 25 uF",
  good: "25,22,-12,...",
  check: (table) =>
    (TABLES[tableName(table)] ?? []).flatMap(({ old, value, percent, series, up }) =>
      table.rows.flatMap((row): Complaint[] => {
        const [was, is, off] = [cellOf(table, row, old), cellOf(table, row, value), cellOf(table, row, percent)];
        if (was === undefined || is === undefined || off === undefined || !(Number(was.text) > 0)) return [];
        const nearest = nearestPreferred(Number(was.text), series, up ? "up" : undefined);
        if (Number(is.text) !== nearest)
          return [
            {
              at: is.span,
              message: `the ${up ? `first of ${series} not below` : `nearest of ${series} to`} ${was.text} is another`,
              received: is.text,
              expected: String(nearest),
            },
          ];
        const deviation = Math.round(1000 * (nearest / Number(was.text) - 1)) / 10;
        return Math.abs(Number(off.text) - deviation) < 1e-6
          ? []
          : [{ at: off.span, message: "the deviation is another", received: off.text, expected: String(deviation) }];
      }),
    ),
};
