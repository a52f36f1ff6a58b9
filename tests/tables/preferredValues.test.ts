import { nearestPreferred, preferredSeries, type SeriesName } from "@underchassis/calc";
import { describe, expect, it } from "vitest";
import { numberOf, rowsOf } from "./describedTables.ts";

const names = Object.keys(preferredSeries) as SeriesName[];
const rows = rowsOf("preferred-values");
const valuesOf = (series: string): number[] => rows.filter((row) => row.series === series).map((row) => numberOf(row, "value"));

/** IEC 60063:2015 (iec-60063-2015): the eight places of E24 that the rounded geometric series misses, computed / standard. */
const e24Exceptions = new Map([
  [10, 27],
  [11, 30],
  [12, 33],
  [13, 36],
  [14, 39],
  [15, 43],
  [16, 47],
  [22, 82],
]);
/** The one place of E192. */
const e192Exceptions = new Map([[185, 920]]);

/** Half up, as the standard rounds. */
const byRule = (count: number, figures: number, exceptions: ReadonlyMap<number, number>): number[] =>
  Array.from({ length: count }, (_, place) => exceptions.get(place) ?? Math.floor(10 ** (figures - 1 + place / count) + 0.5));

describe("the table of preferred values", () => {
  it("keeps the rule of the series with its published exceptions, and needs every one of them", () => {
    expect(valuesOf("E24")).toEqual(byRule(24, 2, e24Exceptions));
    for (const [place, value] of e24Exceptions) expect(byRule(24, 2, new Map())[place]).not.toBe(value);
    expect(valuesOf("E192")).toEqual(byRule(192, 3, e192Exceptions));
    expect(byRule(192, 3, new Map())[185]).toBe(919);
    expect(valuesOf("E96")).toEqual(byRule(96, 3, new Map()));
    expect(valuesOf("E48")).toEqual(byRule(48, 3, new Map()));
  });

  it("nests: every second member is the next coarser series, up to E24 and again from E48", () => {
    const pairs = [
      ["E24", "E12"],
      ["E12", "E6"],
      ["E6", "E3"],
      ["E192", "E96"],
      ["E96", "E48"],
    ] as const;
    for (const [finer, coarser] of pairs) expect(valuesOf(finer).filter((_, place) => place % 2 === 0)).toEqual(valuesOf(coarser));
  });

  it.each(names)("%s is what the code has, with the members and figures its row says", (series) => {
    expect(valuesOf(series)).toEqual(preferredSeries[series]);
    const facts = rowsOf("preferred-series").find((row) => row.series === series);
    if (!facts) throw new Error(`${series} is missing`);
    expect(numberOf(facts, "members")).toBe(valuesOf(series).length);
    for (const value of valuesOf(series)) expect(String(value)).toHaveLength(numberOf(facts, "figures"));
  });
});

describe("historic values", () => {
  const percentFrom = (old: number, value: number): number => Math.round(1000 * (value / old - 1)) / 10;
  const nearest = (old: number, series: SeriesName): number => nearestPreferred(old, series);

  it.each(rowsOf("historic-resistors"))("resistor $oldFigures", (row) => {
    const old = numberOf(row, "oldFigures");
    for (const [series, column] of [
      ["E24", "e24"],
      ["E12", "e12"],
    ] as const) {
      const value = numberOf(row, `${column}Figures`);
      expect(value).toBe(nearest(old, series));
      expect(numberOf(row, `${column}Percent`)).toBeCloseTo(percentFrom(old, value), 6);
    }
  });

  it.each(rowsOf("historic-paper-mica"))("paper or mica $oldFigures", (row) => {
    const old = numberOf(row, "oldFigures");
    for (const [series, column] of [
      ["E12", "e12"],
      ["E24", "e24"],
    ] as const) {
      const value = numberOf(row, `${column}Figures`);
      expect(value).toBe(nearest(old, series));
      expect(numberOf(row, `${column}Percent`)).toBeCloseTo(percentFrom(old, value), 6);
    }
  });

  it.each(rowsOf("historic-electrolytics"))("electrolytic $oldMicrofarads uF", (row) => {
    const old = numberOf(row, "oldMicrofarads");
    const e12 = numberOf(row, "e12Microfarads");
    const up = numberOf(row, "e6UpMicrofarads");
    expect(e12).toBe(nearest(old, "E12"));
    expect(up).toBe(nearestPreferred(old, "E6", "up"));
    expect(numberOf(row, "e12Percent")).toBeCloseTo(percentFrom(old, e12), 6);
    expect(numberOf(row, "e6UpPercent")).toBeCloseTo(percentFrom(old, up), 6);
  });
});
