import type { CodeReading } from "./codeReading.ts";
import type { Colour } from "./colours.ts";
import { farads, type Percents, percentsOf, type Reader } from "./dotReading.ts";

/** Older EIA/RETMA table, two copies agree (S17). Grey and white are fractions here. */
export const ceramicExponents: Percents = { black: 0, brown: 1, red: 2, orange: 3, yellow: 4, grey: -2, white: -1 };
export const percentsAbove10: Percents = { black: 20, brown: 1, red: 2, orange: 2.5, green: 5, white: 10, none: 20 };
/** Picofarad, up to 10 pF (S17; brown from-memory). */
export const picofaradsUpTo10: Percents = { black: 2, brown: 0.1, green: 0.5, grey: 0.25, white: 1 };

/** ppm/K: as the older charts have it (S17) and as later EIA-198 has it (from-memory); they differ for grey and white. */
export const ceramicCoefficients: Readonly<Partial<Record<Colour, readonly [older: number, later: number | null]>>> = {
  black: [0, 0],
  brown: [-30, -33],
  red: [-80, -75],
  orange: [-150, -150],
  yellow: [-220, -220],
  green: [-330, -330],
  blue: [-470, -470],
  violet: [-750, -750],
  grey: [30, null],
  white: [500, null],
};

/** Six marks: figure and multiplier of the temperature coefficient (from-memory). */
export const coefficientFigures: Percents = { black: 0, red: 1, orange: 1.5, yellow: 2.2, green: 3.3, blue: 4.7, violet: 7.5 };
export const coefficientMultipliers: Percents = {
  black: -1,
  brown: -10,
  red: -100,
  orange: -1000,
  yellow: -10000,
  green: 1,
  blue: 10,
  violet: 100,
  grey: 1000,
  white: 10000,
};

/** Tolerance as a share: picofarad up to 10 pF, percent above. */
function toleranceOf(value: number, mark: Colour): Pick<CodeReading, "tolerance"> | undefined {
  if (value <= 10e-12) {
    const picofarads = picofaradsUpTo10[mark];
    // A tolerance as wide as the value itself was never made: the marks were read in a wrong order.
    if (picofarads === undefined || picofarads * 1e-12 >= value) return undefined;
    const share = Number(((picofarads * 1e-12) / value).toPrecision(6));
    return { tolerance: { minus: share, plus: share } };
  }
  const percent = percentsAbove10[mark];
  return percent === undefined ? undefined : percentsOf(percent);
}

function read(
  figures: readonly (Colour | undefined)[],
  power: Colour | undefined,
  mark: Colour,
): Pick<CodeReading, "value" | "dimension" | "tolerance" | "toleranceWritten"> | undefined {
  const value = farads(figures, power, undefined, ceramicExponents);
  const tolerance = value === undefined ? undefined : toleranceOf(value, mark);
  return value === undefined || !tolerance ? undefined : { value, dimension: "capacitance", ...tolerance, toleranceWritten: true };
}

/** Disc with three marks: figure, figure, power of ten; general purpose (layout from-memory). */
export const ceramicThreeMarks: Reader = ([first, second, power]) => {
  const value = farads([first, second], power, undefined, ceramicExponents);
  if (value === undefined) return [];
  const notes = ["general purpose: may also be a guaranteed minimum value, -0 +100 %"];
  return [
    {
      value,
      dimension: "capacitance",
      ...percentsOf(20),
      toleranceWritten: false,
      family: "ceramic, 3 marks",
      because: "two figures and a power of ten",
      notes,
    },
  ];
};

/** Tubular or disc with five marks: temperature coefficient, figure, figure, power of ten, tolerance (layout from-memory). */
export const ceramicFiveMarks: Reader = ([coefficient = "none", first, second, power, mark = "none"]) => {
  const reading = read([first, second], power, mark);
  const pair = ceramicCoefficients[coefficient];
  if (!reading || !pair) return [];
  const [older, later] = pair;
  const notes = later === null ? [`${coefficient}: ${older} ppm/K on older charts, general purpose later`] : [];
  const span = later === null ? {} : { temperatureCoefficientPpm: [Math.min(older, later), Math.max(older, later)] as const };
  return [{ ...reading, family: "ceramic, 5 marks", because: "the first or wide mark is the temperature coefficient", ...span, notes }];
};

/** Six marks: coefficient figure and multiplier, figure, figure, power of ten, tolerance (from-memory). */
export const ceramicSixMarks: Reader = ([figure = "none", multiplier = "none", first, second, power, mark = "none"]) => {
  const reading = read([first, second], power, mark);
  const size = coefficientFigures[figure];
  const times = coefficientMultipliers[multiplier];
  if (!reading || size === undefined || times === undefined) return [];
  const ppm = Number((size * times).toPrecision(6)) || 0;
  return [
    {
      ...reading,
      family: "ceramic, 6 marks",
      because: "the first two marks are the temperature coefficient",
      temperatureCoefficientPpm: [ppm, ppm] as const,
      notes: [],
    },
  ];
};
