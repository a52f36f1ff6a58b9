/** IEC 60063:2015 (iec-60063-2015): the places at which the standard's value is not the rounded member of the geometric series. */
const EXCEPTIONS: Readonly<Record<string, Readonly<Record<number, number>>>> = {
  E24: { 10: 27, 11: 30, 12: 33, 13: 36, 14: 39, 15: 43, 16: 47, 22: 82 },
  E192: { 185: 920 },
};
/** Members and figures of each series, and the finer one of which it is every second member. */
export const SERIES: Readonly<Record<string, { members: number; figures: number; from?: string }>> = {
  E3: { members: 3, figures: 2, from: "E6" },
  E6: { members: 6, figures: 2, from: "E12" },
  E12: { members: 12, figures: 2, from: "E24" },
  E24: { members: 24, figures: 2 },
  E48: { members: 48, figures: 3, from: "E96" },
  E96: { members: 96, figures: 3, from: "E192" },
  E192: { members: 192, figures: 3 },
};

/** The values of a series by its own rule: the geometric series, rounded half up, with the published exceptions. */
export function seriesByRule(name: string): number[] {
  const series = SERIES[name];
  if (series === undefined) return [];
  if (series.from !== undefined) return seriesByRule(series.from).filter((_, place) => place % 2 === 0);
  const { members, figures } = series;
  return Array.from(
    { length: members },
    (_, place) => EXCEPTIONS[name]?.[place] ?? Math.floor(10 ** (figures - 1 + place / members) + 0.5),
  );
}
