import { defineFormula } from "../defineFormula.ts";
import { requireThat } from "../requireThat.ts";

/** Series resistor that extends a voltmeter: Rx = (V2 - V1)/Ifs. SI base units in and out; FormulaError outside the limits. */
export const rangeExtension = defineFormula({
  id: "range-extension",
  area: "meters",
  title: "Series resistor that extends a voltmeter",
  expression: "Rx = (V2 - V1)/Ifs",
  inputs: {
    presentVolts: { symbol: "V1", dimension: "voltage", meaning: "full scale now", minimum: 0 },
    wantedVolts: { symbol: "V2", dimension: "voltage", meaning: "full scale wanted", above: 0 },
    fullScaleAmps: { symbol: "Ifs", dimension: "current", meaning: "full-scale current", above: 0 },
  },
  outputs: {
    ohms: { symbol: "Rx", dimension: "resistance", meaning: "resistor to add in series" },
  },
  limits: "The wanted range lies above the present one.",
  source: "neets-module-3",
  compute: ({ presentVolts, wantedVolts, fullScaleAmps }) => {
    requireThat(wantedVolts > presentVolts, "wantedVolts", wantedVolts, "must be above presentVolts");
    return { ohms: (wantedVolts - presentVolts) / fullScaleAmps };
  },
});
