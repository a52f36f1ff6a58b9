import type { Circuit } from "./circuit.ts";
import type { PortScratch } from "./devices/port-device.ts";
import { PortNewton } from "./port-newton.ts";
import type { Waves } from "./waves.ts";

/** Currents below this many amperes are not judged: rounding of the lent conductances reaches them. */
const LEAST_AMPS = 1e-6;
const SAMPLES = 8;

/**
 * Largest sum of currents left over at any point, as a share of the largest single current there, over a few stages of
 * the solution. Device currents are evaluated anew from the point voltages, so that it also shows an unsettled Newton.
 */
export function currentResidual(circuit: Circuit, waves: Waves): number {
  const { trajectory } = waves;
  const newton = new PortNewton(circuit);
  const { size } = circuit;
  const solution = new Float64Array(size);
  const sum = new Float64Array(size);
  const largest = new Float64Array(size);
  const add = (row: number, amps: number): void => {
    if (row < 0) return;
    sum[row] = sum[row]! + amps;
    largest[row] = Math.max(largest[row]!, Math.abs(amps));
  };
  let worst = 0;
  const stride = Math.max(1, Math.floor(trajectory.stages / SAMPLES)) | 1;
  for (let stage = trajectory.stages - 1; stage >= 0; stage -= stride) {
    const { perSecond } = waves.reductions[trajectory.levels[stage]!]!;
    const history = trajectory.histories.subarray(stage * trajectory.states, (stage + 1) * trajectory.states);
    for (let row = 0; row < size; row++) solution[row] = waves.valueAt(row, stage);
    sum.fill(0);
    largest.fill(0);
    const at = (row: number): number => (row < 0 ? 0 : solution[row]!);
    const { rows, columns, values } = circuit.stamps;
    for (let k = 0; k < values.length; k++) add(rows[k]!, values[k]! * solution[columns[k]!]!);
    circuit.states.forEach((slot, k) => {
      const amps = slot.coefficient * perSecond * (at(slot.plus) - at(slot.minus) - history[k]!);
      add(slot.plus, amps);
      add(slot.minus, -amps);
    });
    deviceCurrents(circuit, newton, at, history, perSecond, add);
    for (let row = 0; row < size; row++) {
      let source = circuit.constant[row]!;
      circuit.harmonics.forEach((harmonic, k) => {
        const base = stage * (1 + 2 * circuit.harmonics.length);
        source += harmonic.sine[row]! * trajectory.basis[base + 1 + 2 * k]! + harmonic.cosine[row]! * trajectory.basis[base + 2 + 2 * k]!;
      });
      add(row, -source);
    }
    for (const row of circuit.pointRows.values()) {
      if (row >= 0) worst = Math.max(worst, Math.abs(sum[row]!) / Math.max(largest[row]!, LEAST_AMPS));
    }
  }
  return worst;
}

function deviceCurrents(
  circuit: Circuit,
  newton: PortNewton,
  at: (row: number) => number,
  history: Float64Array,
  perSecond: number,
  add: (row: number, amps: number) => void,
): void {
  const scratch: PortScratch = newton.scratch;
  circuit.ports.forEach((port, k) => {
    scratch.volts[k] = at(port.plus) - at(port.minus);
  });
  newton.setFlux(history, circuit.states.length, perSecond);
  newton.evaluate();
  circuit.ports.forEach((port, k) => {
    const amps = scratch.amps[k]! - port.lent * scratch.volts[k]!;
    add(port.plus, amps);
    add(port.minus, -amps);
  });
}
