import { defineFormula } from "../defineFormula.ts";
import { requireThat } from "../requireThat.ts";

/** Plate voltage under load: Vp = Eb - Ip (RL + Rk). SI base units in and out; FormulaError outside the limits. */
export const plateVoltage = defineFormula({
  id: "plate-voltage",
  area: "tubes",
  title: "Plate voltage under load",
  expression: "Vp = Eb - Ip (RL + Rk)",
  inputs: {
    supplyVolts: { symbol: "Eb", dimension: "voltage", meaning: "plate supply", above: 0 },
    plateAmps: { symbol: "Ip", dimension: "current", meaning: "plate current", minimum: 0 },
    loadOhms: { symbol: "RL", dimension: "resistance", meaning: "direct-current resistance of the plate load", minimum: 0 },
    cathodeOhms: { symbol: "Rk", dimension: "resistance", meaning: "cathode resistor", minimum: 0, default: 0 },
  },
  outputs: {
    plateVolts: { symbol: "Vp", dimension: "voltage", meaning: "plate to cathode" },
    chassisVolts: { symbol: "Vc", dimension: "voltage", meaning: "plate to ground" },
    cathodeVolts: { symbol: "Vk", dimension: "voltage", meaning: "cathode to ground" },
  },
  limits: "Triode, or pentode without its screen current; the resistors leave something for the tube.",
  source: "circuit-theory",
  compute: ({ supplyVolts, plateAmps, loadOhms, cathodeOhms }) => {
    const plateVolts = supplyVolts - plateAmps * (loadOhms + cathodeOhms);
    requireThat(plateVolts >= 0, "plateAmps", plateAmps, "must leave a positive plate voltage");
    return { plateVolts, chassisVolts: supplyVolts - plateAmps * loadOhms, cathodeVolts: plateAmps * cathodeOhms };
  },
});
