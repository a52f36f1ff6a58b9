import { defineFormula } from "../defineFormula.ts";
import { parallelOf } from "../parallelOf.ts";
import { requireThat } from "../requireThat.ts";

/** Corner frequency of resistance and capacitance: f = 1/(2 pi R C). SI base units in and out; FormulaError outside the limits. */
export const rcCorner = defineFormula({
  id: "rc-corner",
  area: "tubes",
  title: "Corner frequency of resistance and capacitance",
  expression: "f = 1/(2 pi R C)",
  inputs: {
    ohms: {
      symbol: "Rn",
      dimension: "resistance",
      meaning: "resistance, in parallel where there are several",
      above: 0,
      list: true,
      open: true,
    },
    farads: { symbol: "C", dimension: "capacitance", meaning: "capacitance", above: 0 },
  },
  outputs: {
    hertz: { symbol: "f", dimension: "frequency", meaning: "frequency where the response is 3 dB down" },
  },
  limits: "One capacitor; the resistance is all that it sees, load included.",
  source: "lessons-ac",
  compute: ({ ohms, farads }) => {
    const seen = parallelOf(...ohms);
    requireThat(seen < Number.POSITIVE_INFINITY, "ohms", seen, "must not all be open");
    return { hertz: 1 / (2 * Math.PI * seen * farads) };
  },
});
