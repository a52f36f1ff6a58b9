import { defineFormula } from "../defineFormula.ts";
import { requireThat } from "../requireThat.ts";

/**
 * Output of a capacitor-input rectifier with source resistance: tan(a) - a = n pi Rs/RL; Vdc = Vp cos(a).
 * SI base units in and out; FormulaError outside the limits.
 */
export const capacitorInputSourceResistance = defineFormula({
  id: "capacitor-input-source-resistance",
  area: "rectifiers",
  title: "Output of a capacitor-input rectifier with source resistance",
  expression: "tan(a) - a = n pi Rs/RL; Vdc = Vp cos(a)",
  inputs: {
    peakVolts: { symbol: "Vp", dimension: "voltage", meaning: "peak of the winding (one half of it at a center tap)", above: 0 },
    sourceOhms: {
      symbol: "Rs",
      dimension: "resistance",
      meaning: "resistance of each conducting path: winding, diode, surge resistor",
      above: 0,
    },
    loadOhms: { symbol: "RL", dimension: "resistance", meaning: "load", above: 0 },
    pulses: { symbol: "p", dimension: "ratio", meaning: "charging pulses in a cycle", minimum: 1, maximum: 2, whole: true, default: 2 },
  },
  outputs: {
    outputVolts: { symbol: "Vdc", dimension: "voltage", meaning: "direct voltage" },
    conductionAngle: { symbol: "2a", dimension: "angle", meaning: "angle of a cycle in which a diode conducts" },
    peakAmps: { symbol: "Im", dimension: "current", meaning: "peak current of a diode" },
  },
  limits: "Capacitor so large that the ripple does not matter, resistances only, Rs at most 100 times RL.",
  source: "circuit-theory",
  compute: ({ peakVolts, sourceOhms, loadOhms, pulses }) => {
    requireThat(sourceOhms <= 100 * loadOhms, "sourceOhms", sourceOhms, "must be at most 100 times loadOhms");
    const wanted = (Math.PI * sourceOhms) / (pulses * loadOhms);
    let [low, high] = [0, Math.PI / 2];
    // Bisection: tan(a) - a rises without a turn from 0 to a quarter of a cycle.
    for (let step = 0; step < 60; step += 1) {
      const middle = (low + high) / 2;
      if (Math.tan(middle) - middle < wanted) low = middle;
      else high = middle;
    }
    const outputVolts = peakVolts * Math.cos(low);
    return { outputVolts, conductionAngle: 2 * low, peakAmps: (peakVolts - outputVolts) / sourceOhms };
  },
});
