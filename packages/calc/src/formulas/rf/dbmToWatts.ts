import { defineFormula } from "../defineFormula.ts";

/** Power from a level in dBm: P = 1 mW 10^(G/10). SI base units in and out; FormulaError outside the limits. */
export const dbmToWatts = defineFormula({
  id: "dbm-to-watts",
  area: "rf",
  title: "Power from a level in dBm",
  expression: "P = 1 mW 10^(G/10)",
  inputs: {
    level: { symbol: "G", dimension: "level", meaning: "level above 1 mW", minimum: -400, maximum: 400 },
  },
  outputs: {
    watts: { symbol: "P", dimension: "power", meaning: "power" },
  },
  limits: "Any resistance.",
  source: "fcc-extra-pool",
  compute: ({ level }) => ({ watts: 1e-3 * 10 ** (level / 10) }),
});
