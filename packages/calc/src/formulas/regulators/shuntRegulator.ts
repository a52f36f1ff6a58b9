import { defineFormula } from "../defineFormula.ts";

/** Shunt regulator: zener diode or gas tube: I = (E - V)/Rs; Iz = I - V/RL. SI base units in and out; FormulaError outside the limits. */
export const shuntRegulator = defineFormula({
  id: "shunt-regulator",
  area: "regulators",
  title: "Shunt regulator: zener diode or gas tube",
  expression: "I = (E - V)/Rs; Iz = I - V/RL",
  inputs: {
    supplyVolts: { symbol: "E", dimension: "voltage", meaning: "supply", above: 0 },
    seriesOhms: { symbol: "Rs", dimension: "resistance", meaning: "series resistor", above: 0 },
    regulatorVolts: { symbol: "Vz", dimension: "voltage", meaning: "voltage of the device", above: 0 },
    loadOhms: { symbol: "RL", dimension: "resistance", meaning: "load", above: 0, open: true, default: Number.POSITIVE_INFINITY },
  },
  outputs: {
    outputVolts: { symbol: "V", dimension: "voltage", meaning: "voltage across device and load" },
    openVolts: { symbol: "Vo", dimension: "voltage", meaning: "voltage if the device were out: below regulatorVolts it does not regulate" },
    seriesAmps: { symbol: "I", dimension: "current", meaning: "current of the series resistor" },
    deviceAmps: { symbol: "Iz", dimension: "current", meaning: "current of the device; 0 when it does not regulate" },
    loadAmps: { symbol: "IL", dimension: "current", meaning: "load current" },
    seriesWatts: { symbol: "PR", dimension: "power", meaning: "heat in the series resistor" },
    deviceWatts: { symbol: "PZ", dimension: "power", meaning: "heat in the device" },
  },
  limits: "Constant device voltage; a gas tube has struck (see gas-tube-start).",
  source: "lessons-semiconductors",
  compute: ({ supplyVolts, seriesOhms, regulatorVolts, loadOhms }) => {
    const openVolts = loadOhms === Number.POSITIVE_INFINITY ? supplyVolts : (supplyVolts * loadOhms) / (seriesOhms + loadOhms);
    const outputVolts = Math.min(openVolts, regulatorVolts);
    const seriesAmps = (supplyVolts - outputVolts) / seriesOhms;
    const loadAmps = outputVolts / loadOhms;
    const deviceAmps = openVolts > regulatorVolts ? seriesAmps - loadAmps : 0;
    return {
      outputVolts,
      openVolts,
      seriesAmps,
      deviceAmps,
      loadAmps,
      seriesWatts: seriesAmps ** 2 * seriesOhms,
      deviceWatts: outputVolts * deviceAmps,
    };
  },
});
