import { defineFormula } from "../defineFormula.ts";
import { requireThat } from "../requireThat.ts";

/**
 * Output of a full-wave rectifier with choke input: Vdc = (2 Vm/pi - Vf) RL/(Rc + RL).
 * SI base units in and out; FormulaError outside the limits.
 */
export const chokeInputOutput = defineFormula({
  id: "choke-input-output",
  area: "rectifiers",
  title: "Output of a full-wave rectifier with choke input",
  expression: "Vdc = (2 Vm/pi - Vf) RL/(Rc + RL)",
  inputs: {
    peakVolts: {
      symbol: "Vm",
      dimension: "voltage",
      meaning: "peak of one half of the winding, or of the whole one behind a bridge",
      above: 0,
    },
    loadOhms: { symbol: "RL", dimension: "resistance", meaning: "load", above: 0 },
    chokeOhms: { symbol: "Rc", dimension: "resistance", meaning: "resistance of choke and winding", minimum: 0, default: 0 },
    dropVolts: { symbol: "Vf", dimension: "voltage", meaning: "drop of the rectifier path", minimum: 0, default: 0 },
  },
  outputs: {
    outputVolts: { symbol: "Vdc", dimension: "voltage", meaning: "direct voltage across the load" },
    idealVolts: { symbol: "V0", dimension: "voltage", meaning: "direct voltage before choke and rectifier take theirs" },
    chokeVolts: { symbol: "Vc", dimension: "voltage", meaning: "drop of the choke" },
    chokeWatts: { symbol: "Pc", dimension: "power", meaning: "heat in choke and winding" },
  },
  limits: "The choke must be above its critical inductance, else the voltage climbs towards the peak. The drop must leave something.",
  source: "choke-input-text",
  compute: ({ peakVolts, loadOhms, chokeOhms, dropVolts }) => {
    const idealVolts = (2 * peakVolts) / Math.PI;
    requireThat(idealVolts > dropVolts, "dropVolts", dropVolts, "must leave something of the average");
    const amps = (idealVolts - dropVolts) / (chokeOhms + loadOhms);
    return { outputVolts: amps * loadOhms, idealVolts, chokeVolts: amps * chokeOhms, chokeWatts: amps ** 2 * chokeOhms };
  },
});
