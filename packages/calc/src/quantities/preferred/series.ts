/**
 * Preferred values of IEC 60063:2015 (S1, S2; literal lists cross-checked S3). E3 to E24 are taken literally, since eight
 * members of E24 differ from the rounded geometric series; E48 to E192 are the rounded series with one exception.
 */
export type SeriesName = "E3" | "E6" | "E12" | "E24" | "E48" | "E96" | "E192";

const e24 = [10, 11, 12, 13, 15, 16, 18, 20, 22, 24, 27, 30, 33, 36, 39, 43, 47, 51, 56, 62, 68, 75, 82, 91];

/** E192, place 185: 919.48 rounds to 919, the standard says 920 (S3). */
const e192Exception = { place: 185, value: 920 };

function rounded(count: 48 | 96 | 192): number[] {
  return Array.from({ length: count }, (_, place) => {
    const inE192 = (place * 192) / count;
    return inE192 === e192Exception.place ? e192Exception.value : Math.floor(100 * 10 ** (place / count) + 0.5);
  });
}

/** One decade of each series: two figures (10 to 91) up to E24, three (100 to 988) from E48. */
export const preferredSeries: Readonly<Record<SeriesName, readonly number[]>> = {
  E3: e24.filter((_, place) => place % 8 === 0),
  E6: e24.filter((_, place) => place % 4 === 0),
  E12: e24.filter((_, place) => place % 2 === 0),
  E24: e24,
  E48: rounded(48),
  E96: rounded(96),
  E192: rounded(192),
};

/** Splits a value into its decade and the series members around it, as correctly rounded decimals. */
function around(value: number, series: SeriesName): number[] {
  const members = preferredSeries[series];
  const figures = (members[0] ?? 10) === 10 ? 1 : 2;
  const decade = Math.floor(Math.log10(value));
  return [decade - 1, decade, decade + 1].flatMap((power) => members.map((member) => Number(`${member}e${power - figures}`)));
}

/** Equal to within the rounding of a double. */
const nearly = (one: number, other: number): boolean => Math.abs(one - other) <= 1e-12 * Math.abs(other);

/** Is a positive value a member of the series, in whatever decade? */
export function isPreferred(value: number, series: SeriesName): boolean {
  return value > 0 && Number.isFinite(value) && around(value, series).some((member) => nearly(value, member));
}

/**
 * The preferred value nearest to `value` by ratio, or the first at or above ("up") or at or below ("down") it. Any unit;
 * throws a RangeError when the value is not positive and finite.
 */
export function nearestPreferred(value: number, series: SeriesName, direction: "nearest" | "up" | "down" = "nearest"): number {
  if (!(value > 0) || !Number.isFinite(value)) throw new RangeError(`a preferred value needs a positive number, not ${value}`);
  const members = around(value, series);
  const exact = members.find((member) => nearly(value, member));
  if (exact !== undefined) return exact;
  if (direction === "up") return members.find((member) => member > value) ?? value;
  if (direction === "down") return members.findLast((member) => member < value) ?? value;
  return members.reduce((best, member) => (Math.abs(Math.log(member / value)) < Math.abs(Math.log(best / value)) ? member : best));
}
