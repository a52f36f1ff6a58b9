import { percentTolerance } from "../quantities/parseTolerance.ts";
import { isPreferred, type SeriesName } from "../quantities/preferred/series.ts";
import { problem, quoted } from "../quantities/problem.ts";
import type { MarkingContext, Result } from "../quantities/types.ts";
import type { CodeReading } from "./codeReading.ts";
import { type Colour, colourDigits, colourExponents, colourNamed, temperatureCoefficients, tolerancePercents } from "./colours.ts";

const expected = 'three to six band colours, such as "yellow violet orange silver"';

/** Fifth band of military composition and film parts, percent per 1000 h: S7, S8, S9, S10. */
export const failureRates: Readonly<Partial<Record<Colour, number>>> = { brown: 1, red: 0.1, orange: 0.01, yellow: 0.001 };

/** A fifth band that is neither value nor tolerance: reference section 3.3 (S62; white and blue doubtful, from-memory). */
const extraBands: Readonly<Partial<Record<Colour, string>>> = {
  black: "fifth band black: wirewound with one maker",
  white: "fifth band white: solderable lead (military) or fusible, the sources disagree",
  blue: "fifth band blue: fusible or flameproof on some sets, doubtful",
};

/** Composition parts before this year carry gold, silver, no band, rarely red or brown as tolerance. */
const filmYear = 1970;
/** IEC 60062:2016 changed grey from 0.05 to 0.01 %. */
const greyChangeYear = 2016;
/** Charts of the 1940s and 1950s give these two the figure itself as the tolerance (reference section 2.1, from-memory). */
const earlyTolerances: Readonly<Partial<Record<Colour, number>>> = { orange: 3, yellow: 4 };
const earlyToleranceBefore = 1960;

interface Scored extends CodeReading {
  score: number;
}

/** Percent a tolerance band stands for in a year; undefined when the colour is none. */
export function tolerancePercent(colour: Colour, era: number | undefined): number | undefined {
  if (era !== undefined && era < earlyToleranceBefore && earlyTolerances[colour] !== undefined) return earlyTolerances[colour];
  if (colour === "grey" && era !== undefined && era < greyChangeYear) return 0.05;
  return tolerancePercents[colour];
}

/** The series parts of this tolerance are made in. */
function seriesOf(percent: number, figures: number): readonly SeriesName[] {
  if (figures === 2) return percent >= 20 ? ["E12", "E24"] : percent >= 10 ? ["E12"] : ["E24"];
  return percent >= 2 ? ["E48", "E24"] : percent >= 1 ? ["E96", "E24"] : ["E192", "E24"];
}

type Layout = { figures: 2 | 3; tolerance: Colour; rate?: Colour; coefficient?: Colour; extra?: Colour; family: string; score: number };

function layoutsOf(bands: readonly Colour[], context: MarkingContext): Layout[] {
  const [, , , fourth = "none", fifth = "none", sixth = "none"] = bands;
  const old = context.era === undefined || context.era < filmYear;
  if (bands.length === 3) return [{ figures: 2, tolerance: "none", family: "3 bands", score: 3 }];
  if (bands.length === 4) return [{ figures: 2, tolerance: fourth, family: "4 bands", score: 3 }];
  if (bands.length === 6) return [{ figures: 3, tolerance: fifth, coefficient: sixth, family: "film, 6 bands", score: 3 }];
  const composition = context.composition === "carbon-composition";
  const film = context.composition !== undefined && !composition;
  const wide = fourth === "gold" || fourth === "silver";
  const list: Layout[] = [
    { figures: 3, tolerance: fifth, family: "film, 5 bands", score: 3 + (film ? 3 : 0) - (composition ? 4 : 0) - (wide && old ? 2 : 0) },
  ];
  if (failureRates[fifth] !== undefined && tolerancePercents[fourth] !== undefined) {
    list.push({
      figures: 2,
      tolerance: fourth,
      rate: fifth,
      family: "military, 4 bands and failure rate",
      score: (composition ? 5 : 1) + (wide ? 3 : -2) - (film ? 2 : 0),
    });
  }
  if (extraBands[fifth] !== undefined && tolerancePercents[fourth] !== undefined) {
    list.push({
      figures: 2,
      tolerance: fourth,
      extra: fifth,
      family: "4 bands and a mark",
      score: (composition ? 3 : 1) + (wide ? 3 : -2),
    });
  }
  return list;
}

function readLayout(bands: readonly Colour[], layout: Layout, context: MarkingContext, reversed: boolean): Scored | null {
  const digits = bands.slice(0, layout.figures).map((colour) => colourDigits[colour]);
  const exponent = colourExponents[bands[layout.figures] ?? "none"];
  const percent = tolerancePercent(layout.tolerance, context.era);
  if (digits.some((digit) => digit === undefined) || exponent === undefined || percent === undefined) return null;
  if (layout.coefficient && temperatureCoefficients[layout.coefficient] === undefined) return null;
  if (digits[0] === 0) return null;
  const value = Number(`${digits.join("")}e${exponent}`);
  const reasons: string[] = [];
  const notes: string[] = [];
  let score = layout.score;
  const series = seriesOf(percent, layout.figures).find((name) => isPreferred(value, name));
  if (series) score += 3;
  reasons.push(series ? `a value of ${series}` : "not a preferred value of that tolerance");
  if (percent < 5 && layout.figures === 2) {
    score -= 2;
    reasons.push("two figures with a close tolerance are rare");
  }
  if (percent >= 5 && layout.figures === 3) {
    score -= 1;
    reasons.push("three figures usually go with 2 % or closer");
  }
  const old = context.era !== undefined && context.era < filmYear;
  if (old && percent < 1) {
    score -= 4;
    reasons.push(`a tolerance of ${percent} % does not fit a part from before ${filmYear}`);
  }
  if (value > 22e6 || value < 0.1) {
    score -= 2;
    reasons.push("an unusual size");
  }
  if (reversed) {
    score -= 3;
    reasons.push("read from the other end");
  }
  if (layout.extra) notes.push(extraBands[layout.extra] ?? "");
  const coefficient = layout.coefficient && temperatureCoefficients[layout.coefficient];
  const rate = layout.rate && failureRates[layout.rate];
  return {
    value,
    dimension: "resistance",
    tolerance: percentTolerance(percent),
    toleranceWritten: layout.tolerance !== "none",
    family: layout.family,
    because: `${layout.family}${reversed ? ", reversed" : ""}: ${reasons.join("; ")}`,
    ...(coefficient === undefined ? {} : { temperatureCoefficientPpm: [-coefficient, coefficient] as const }),
    ...(rate === undefined ? {} : { failureRatePercent: rate }),
    notes,
    score,
  };
}

/**
 * Every way three to six resistor bands can be read, most likely first, in ohms. Both directions are tried; a first band of gold,
 * silver or black rules a direction out (IEC 60062, S64). A military fifth band is a failure rate (S7 to S10). A single black band
 * is a link of 0 ohm (S62). "none" as the last colour stands for a missing band.
 */
export function decodeBands(names: readonly string[], context: MarkingContext = {}): Result<readonly CodeReading[]> {
  const written = names.join(" ");
  const bands: Colour[] = [];
  let offset = 0;
  for (const name of names) {
    const colour = colourNamed(name);
    if (!colour) return problem(`${quoted(name)} is not a colour of the code`, offset, name.length, expected);
    bands.push(colour);
    offset += name.length + 1;
  }
  while (bands.length > 3 && bands.at(-1) === "none") bands.pop();
  if (bands.length === 1 && bands[0] === "black") {
    const link: CodeReading = {
      value: 0,
      dimension: "resistance",
      tolerance: { minus: 0, plus: 0 },
      toleranceWritten: false,
      family: "link",
      because: "a single black band is a link",
      notes: [],
    };
    return { ok: true, value: [link] };
  }
  if (bands.length < 3 || bands.length > 6)
    return problem(`${bands.length} band${bands.length === 1 ? "" : "s"} cannot be read`, 0, written.length, expected);
  const read = (list: readonly Colour[], reversed: boolean): Scored[] =>
    layoutsOf(list, context).flatMap((layout) => readLayout(list, layout, context, reversed) ?? []);
  const readings = [...read(bands, false), ...read([...bands].reverse(), true)];
  const distinct = readings.filter((reading, place) => readings.findIndex((other) => sameReading(reading, other)) === place);
  if (distinct.length === 0) return problem(`${quoted(written)} fits no resistor code from either end`, 0, written.length, expected);
  distinct.sort((one, other) => other.score - one.score);
  return { ok: true, value: distinct.map(({ score: _score, ...reading }) => reading) };
}

function sameReading(one: CodeReading, other: CodeReading): boolean {
  return one.value === other.value && one.tolerance.minus === other.tolerance.minus && one.family === other.family;
}
