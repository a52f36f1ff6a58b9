import { defineFormula } from "../defineFormula.ts";
import { requireThat } from "../requireThat.ts";

/**
 * Half-wave rectifier into a resistor: Idc = (Vm - Vf)/(pi (rf + RL)); PIV = Vm.
 * SI base units in and out; FormulaError outside the limits.
 */
export const halfWaveResistive = defineFormula({
  id: "half-wave-resistive",
  area: "rectifiers",
  title: "Half-wave rectifier into a resistor",
  expression: "Idc = (Vm - Vf)/(pi (rf + RL)); PIV = Vm",
  inputs: {
    peakVolts: { symbol: "Vm", dimension: "voltage", meaning: "peak of the winding", above: 0 },
    loadOhms: { symbol: "RL", dimension: "resistance", meaning: "load", above: 0 },
    diodeOhms: { symbol: "rf", dimension: "resistance", meaning: "forward resistance of each diode", minimum: 0, default: 0 },
    dropVolts: { symbol: "Vf", dimension: "voltage", meaning: "constant forward drop of each diode", minimum: 0, default: 0 },
  },
  outputs: {
    averageVolts: { symbol: "Vdc", dimension: "voltage", meaning: "average voltage across the load" },
    averageAmps: { symbol: "Idc", dimension: "current", meaning: "average load current" },
    peakAmps: { symbol: "Im", dimension: "current", meaning: "peak current of a diode" },
    rmsAmps: { symbol: "Irms", dimension: "current", meaning: "RMS load current" },
    rippleVolts: { symbol: "Vr", dimension: "voltage", meaning: "RMS of all that alternates across the load" },
    outputWatts: { symbol: "Pdc", dimension: "power", meaning: "direct-current power in the load" },
    inputWatts: { symbol: "Pac", dimension: "power", meaning: "power taken from the winding by load and diode resistance" },
    efficiency: { symbol: "eta", dimension: "ratio", meaning: "Pdc/Pac" },
    inverseVolts: { symbol: "PIV", dimension: "voltage", meaning: "peak inverse voltage of a diode" },
    diodeAmps: { symbol: "Id", dimension: "current", meaning: "average current of a diode" },
  },
  limits:
    "Resistive load, no filter, no winding resistance. A constant drop is taken off the peak only: right while it is small beside the peak, which it must lie below.",
  source: "neets-module-6",
  compute: ({ peakVolts, loadOhms, diodeOhms, dropVolts }) => {
    const path = loadOhms + diodeOhms;
    const drive = peakVolts - dropVolts;
    requireThat(drive > 0, "dropVolts", dropVolts, "must leave something of peakVolts");
    const amps = drive / path;
    const averageAmps = amps / Math.PI;
    const rmsAmps = amps / 2;
    const inputWatts = rmsAmps ** 2 * path;
    const outputWatts = averageAmps ** 2 * loadOhms;
    return {
      averageVolts: averageAmps * loadOhms,
      averageAmps,
      peakAmps: amps,
      rmsAmps,
      rippleVolts: Math.sqrt(rmsAmps ** 2 - averageAmps ** 2) * loadOhms,
      outputWatts,
      inputWatts,
      efficiency: outputWatts / inputWatts,
      inverseVolts: peakVolts,
      diodeAmps: averageAmps,
    };
  },
});
