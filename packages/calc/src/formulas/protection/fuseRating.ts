import { defineFormula } from "../defineFormula.ts";

/** Fuse rating for a steady current: In = I/k. SI base units in and out; FormulaError outside the limits. */
export const fuseRating = defineFormula({
  id: "fuse-rating",
  area: "protection",
  title: "Fuse rating for a steady current",
  expression: "In = I/k",
  inputs: {
    amps: { symbol: "I", dimension: "current", meaning: "steady current, RMS", above: 0 },
    share: {
      symbol: "k",
      dimension: "ratio",
      meaning: "share of the rating to load: 75 % of a UL fuse, up to 100 % of an IEC fuse",
      above: 0,
      maximum: 1,
      default: 0.75,
    },
  },
  outputs: {
    ratedAmps: { symbol: "In", dimension: "current", meaning: "least rating" },
  },
  limits: "At 25 degC; hotter fuses carry less. The inrush decides the speed.",
  source: "fuse-maker-sheets",
  compute: ({ amps, share }) => ({ ratedAmps: amps / share }),
});
