import { defineFormula } from "../defineFormula.ts";
import { requireThat } from "../requireThat.ts";

/**
 * Ripple behind a choke, capacitor, choke filter: Vo = Vi/|D + j B/RL|; D = 1 - w^2 L1 C; B = w (L1 + L2 D).
 * SI base units in and out; FormulaError outside the limits.
 */
export const chokeCapacitorChoke = defineFormula({
  id: "choke-capacitor-choke",
  area: "filters",
  title: "Ripple behind a choke, capacitor, choke filter",
  expression: "Vo = Vi/|D + j B/RL|; D = 1 - w^2 L1 C; B = w (L1 + L2 D)",
  inputs: {
    inputVolts: { symbol: "Vi", dimension: "voltage", meaning: "ripple before the filter", minimum: 0 },
    firstHenries: { symbol: "L1", dimension: "inductance", meaning: "first choke", above: 0 },
    farads: { symbol: "C", dimension: "capacitance", meaning: "capacitor", above: 0 },
    secondHenries: { symbol: "L2", dimension: "inductance", meaning: "second choke", above: 0 },
    loadOhms: { symbol: "RL", dimension: "resistance", meaning: "load", above: 0 },
    rippleHertz: { symbol: "fr", dimension: "frequency", meaning: "ripple frequency", above: 0 },
  },
  outputs: {
    outputVolts: { symbol: "Vo", dimension: "voltage", meaning: "ripple across the load" },
    factor: { symbol: "k", dimension: "ratio", meaning: "share that passes" },
  },
  limits: "Chokes and capacitor without losses; exact for one frequency.",
  source: "lessons-ac",
  compute: ({ inputVolts, firstHenries, farads, secondHenries, loadOhms, rippleHertz }) => {
    const omega = 2 * Math.PI * rippleHertz;

    // Chain of the series and shunt arms seen from the load: D + B/RL of the chain matrix, real and imaginary part.
    const shunt = 1 - omega ** 2 * firstHenries * farads;
    const reactance = omega * (firstHenries + secondHenries * shunt);
    const size = Math.hypot(shunt, reactance / loadOhms);
    requireThat(size > 0, "rippleHertz", rippleHertz, "must not be a resonance of the filter");
    return { outputVolts: inputVolts / size, factor: 1 / size };
  },
});
