/**
 * Colours of the marking codes. Digits, multipliers, tolerances: IEC 60062:2016 clause 3 (S4, S5); letters and the black, green
 * and grey temperature coefficients are from-memory.
 */
export const colours = [
  "black",
  "brown",
  "red",
  "orange",
  "yellow",
  "green",
  "blue",
  "violet",
  "grey",
  "white",
  "gold",
  "silver",
  "pink",
  "none",
] as const;

export type Colour = (typeof colours)[number];

/** Digit 0 to 9; gold, silver, pink and none have none. */
export const colourDigits: Readonly<Partial<Record<Colour, number>>> = {
  black: 0,
  brown: 1,
  red: 2,
  orange: 3,
  yellow: 4,
  green: 5,
  blue: 6,
  violet: 7,
  grey: 8,
  white: 9,
};

/** Power of ten as a multiplier (S4; pink new in 2016, S5). */
export const colourExponents: Readonly<Partial<Record<Colour, number>>> = { ...colourDigits, gold: -1, silver: -2, pink: -3 };

/** Resistor tolerance in percent, IEC 60062:2016 (S4). */
export const tolerancePercents: Readonly<Partial<Record<Colour, number>>> = {
  silver: 10,
  gold: 5,
  brown: 1,
  red: 2,
  orange: 0.05,
  yellow: 0.02,
  green: 0.5,
  blue: 0.25,
  violet: 0.1,
  grey: 0.01,
  none: 20,
};

/** Temperature coefficient, sixth band, ppm/K (S4; black, green, grey from-memory). */
export const temperatureCoefficients: Readonly<Partial<Record<Colour, number>>> = {
  black: 250,
  brown: 100,
  red: 50,
  orange: 15,
  yellow: 25,
  green: 20,
  blue: 10,
  violet: 5,
  grey: 1,
};

/** Other spellings; the two-letter ones are those of IEC 60757 (from-memory). */
const spellings: Readonly<Record<string, Colour>> = {
  gray: "grey",
  purple: "violet",
  "no colour": "none",
  "no color": "none",
  unpainted: "none",
  bk: "black",
  bn: "brown",
  rd: "red",
  og: "orange",
  ye: "yellow",
  gn: "green",
  bu: "blue",
  vt: "violet",
  gy: "grey",
  wh: "white",
  gd: "gold",
  sr: "silver",
  pk: "pink",
};

/** The colour a word names, or undefined. */
export function colourNamed(word: string): Colour | undefined {
  const key = word.trim().toLowerCase();
  return colours.find((colour) => colour === key) ?? (Object.hasOwn(spellings, key) ? spellings[key] : undefined);
}
