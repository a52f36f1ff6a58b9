import { defineFormula } from "../defineFormula.ts";

/** Pulling of a crystal by its load capacitance: df/f = C1/(2 (C0 + CL)). SI base units in and out; FormulaError outside the limits. */
export const crystalPulling = defineFormula({
  id: "crystal-pulling",
  area: "rf",
  title: "Pulling of a crystal by its load capacitance",
  expression: "df/f = C1/(2 (C0 + CL))",
  inputs: {
    hertz: { symbol: "f", dimension: "frequency", meaning: "series-resonant frequency", above: 0 },
    motionalFarads: { symbol: "C1", dimension: "capacitance", meaning: "motional capacitance", above: 0 },
    holderFarads: { symbol: "C0", dimension: "capacitance", meaning: "capacitance of holder and electrodes", minimum: 0 },
    loadFarads: { symbol: "CL", dimension: "capacitance", meaning: "load capacitance", above: 0 },
  },
  outputs: {
    shift: { symbol: "df/f", dimension: "ratio", meaning: "shift as a share, above series resonance" },
    shiftHertz: { symbol: "df", dimension: "frequency", meaning: "shift" },
  },
  limits: "Fundamental, shift small.",
  source: "from-memory",
  compute: ({ hertz, motionalFarads, holderFarads, loadFarads }) => {
    const shift = motionalFarads / (2 * (holderFarads + loadFarads));
    return { shift, shiftHertz: shift * hertz };
  },
});
