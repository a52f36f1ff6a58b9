import { defineFormula } from "../defineFormula.ts";
import { requireThat } from "../requireThat.ts";

/** Line voltage with the same core flux at another frequency: V' = V f'/f. SI base units in and out; FormulaError outside the limits. */
export const voltageAtFrequency = defineFormula({
  id: "voltage-at-frequency",
  area: "transformers",
  title: "Line voltage with the same core flux at another frequency",
  expression: "V' = V f'/f",
  inputs: {
    lineVolts: { symbol: "V", dimension: "voltage", meaning: "design line voltage", minimum: 0 },
    designHertz: { symbol: "f", dimension: "frequency", meaning: "design frequency", above: 0 },
    hertz: { symbol: "f'", dimension: "frequency", meaning: "frequency there is", above: 0 },
  },
  outputs: {
    volts: { symbol: "V'", dimension: "voltage", meaning: "line voltage that gives the same flux" },
  },
  limits: "Below the design frequency; above it the insulation is the limit, not the flux.",
  source: "circuit-theory",
  compute: ({ lineVolts, designHertz, hertz }) => {
    requireThat(hertz <= designHertz, "hertz", hertz, "must not be above designHertz");
    return { volts: (lineVolts * hertz) / designHertz };
  },
});
