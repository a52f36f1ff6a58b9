import { defineFormula } from "../defineFormula.ts";
import { parallelOf } from "../parallelOf.ts";

/** What a voltmeter shows at a divider tap: V' = E (R2||Rv)/(R1 + R2||Rv). SI base units in and out; FormulaError outside the limits. */
export const voltmeterLoading = defineFormula({
  id: "voltmeter-loading",
  area: "meters",
  title: "What a voltmeter shows at a divider tap",
  expression: "V' = E (R2||Rv)/(R1 + R2||Rv)",
  inputs: {
    supplyVolts: { symbol: "E", dimension: "voltage", meaning: "voltage across the divider" },
    upperOhms: { symbol: "R1", dimension: "resistance", meaning: "resistance from supply to tap", above: 0 },
    lowerOhms: { symbol: "R2", dimension: "resistance", meaning: "resistance from tap to ground", above: 0, open: true },
    rangeVolts: { symbol: "Vfs", dimension: "voltage", meaning: "range of the meter", above: 0 },
    ohmsPerVolt: { symbol: "S", dimension: "ohms-per-volt", meaning: "its ohms for each volt", above: 0 },
  },
  outputs: {
    trueVolts: { symbol: "V", dimension: "voltage", meaning: "voltage without the meter" },
    shownVolts: { symbol: "V'", dimension: "voltage", meaning: "voltage that the meter shows" },
    error: { symbol: "e", dimension: "ratio", meaning: "share by which it shows too little" },
  },
  limits: "A voltmeter of constant ohms per volt; one of constant input resistance is rangeVolts 1 V with that resistance.",
  source: "lessons-dc",
  compute: ({ supplyVolts, upperOhms, lowerOhms, rangeVolts, ohmsPerVolt }) => {
    const share = (foot: number): number => (foot === Number.POSITIVE_INFINITY ? 1 : foot / (upperOhms + foot));
    const [without, beside] = [share(lowerOhms), share(parallelOf(lowerOhms, rangeVolts * ohmsPerVolt))];
    return { trueVolts: supplyVolts * without, shownVolts: supplyVolts * beside, error: 1 - beside / without };
  },
});
