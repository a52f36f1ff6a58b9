import { defineFormula } from "../defineFormula.ts";
import { requireThat } from "../requireThat.ts";

/**
 * Power of a push-pull class B stage: P = 2 (Eb - Vmin)^2/Rpp; eta = pi/4 (1 - Vmin/Eb).
 * SI base units in and out; FormulaError outside the limits.
 */
export const classBOutput = defineFormula({
  id: "class-b-output",
  area: "tubes",
  title: "Power of a push-pull class B stage",
  expression: "P = 2 (Eb - Vmin)^2/Rpp; eta = pi/4 (1 - Vmin/Eb)",
  inputs: {
    supplyVolts: { symbol: "Eb", dimension: "voltage", meaning: "plate supply", above: 0 },
    minimumVolts: { symbol: "Vmin", dimension: "voltage", meaning: "lowest plate voltage of the swing", minimum: 0 },
    loadOhms: { symbol: "Rpp", dimension: "resistance", meaning: "load from plate to plate", above: 0 },
  },
  outputs: {
    outputWatts: { symbol: "P", dimension: "power", meaning: "output power, sine at full swing" },
    efficiency: { symbol: "eta", dimension: "ratio", meaning: "output as a share of the plate input" },
    averageAmps: { symbol: "Ib", dimension: "current", meaning: "supply current of both tubes" },
    plateWatts: { symbol: "Pp", dimension: "power", meaning: "dissipation of both plates" },
  },
  limits: "Each tube conducts exactly one half; the lowest plate voltage lies below the supply.",
  source: "circuit-theory",
  compute: ({ supplyVolts, minimumVolts, loadOhms }) => {
    requireThat(minimumVolts < supplyVolts, "minimumVolts", minimumVolts, "must be below supplyVolts");
    const swing = supplyVolts - minimumVolts;
    const outputWatts = (2 * swing ** 2) / loadOhms;
    const averageAmps = (8 * swing) / (Math.PI * loadOhms);
    return {
      outputWatts,
      averageAmps,
      efficiency: outputWatts / (averageAmps * supplyVolts),
      plateWatts: averageAmps * supplyVolts - outputWatts,
    };
  },
});
