import type { Circuit } from "./circuit.ts";
import type { Probe } from "./solution.ts";
import { peakAt } from "./wave-figures.ts";
import type { Waves } from "./waves.ts";

/** A probe's instantaneous value as a linear function of unknowns, ports and the stores at the start of the stage. */
export interface Functional {
  rows: { row: number; factor: number }[];
  ports: { port: number }[];
  histories: { state: number; factor: number }[];
}

/** Weight of each stage in the probe's value, to first order about the solution. */
export function probeGain(waves: Waves, probe: Probe, wave: Float64Array): Float64Array {
  const { weights } = waves.trajectory;
  const gain = new Float64Array(wave.length);
  if (probe.quantity === "dc-volts" || probe.quantity === "dc-amps") return weights;
  if (probe.quantity === "ac-volts" || probe.quantity === "rms-amps") {
    let mean = 0;
    if (probe.quantity === "ac-volts") for (let k = 0; k < wave.length; k++) mean += weights[k]! * wave[k]!;
    let square = 0;
    for (let k = 0; k < wave.length; k++) square += weights[k]! * (wave[k]! - mean) ** 2;
    const rms = Math.sqrt(square);
    if (rms > 0) for (let k = 0; k < wave.length; k++) gain[k] = (weights[k]! * (wave[k]! - mean)) / rms;
    return gain;
  }
  addPeaks(gain, wave, waves.stagesPerStep, 1);
  if (probe.quantity === "ripple-volts") addPeaks(gain, wave, waves.stagesPerStep, -1);
  return gain;
}

/**
 * Peaks this close to the highest, as a share of peak to peak, count as equally high: the two halves of a full-wave
 * supply, of which now one and now the other is the higher as a part moves within its tolerance.
 */
const EQUAL_PEAKS = 0.01;

/** Shares a gain of `sign` among the equally high (or low) peaks of a waveform. */
function addPeaks(gain: Float64Array, wave: Float64Array, stride: number, sign: 1 | -1): void {
  const count = wave.length / stride;
  const place = (k: number): number => ((k + count) % count) * stride + stride - 1;
  const value = (k: number): number => sign * wave[place(k)]!;
  let high = Number.NEGATIVE_INFINITY;
  let low = Number.POSITIVE_INFINITY;
  for (let k = 0; k < count; k++) {
    high = Math.max(high, value(k));
    low = Math.min(low, value(k));
  }
  const peaks: number[] = [];
  for (let k = 0; k < count; k++) {
    if (value(k) >= high - EQUAL_PEAKS * (high - low) && value(k) >= value(k - 1) && value(k) > value(k + 1)) peaks.push(k);
  }
  if (peaks.length === 0) peaks.push(count - 1);
  for (const k of peaks) {
    peakAt(wave, stride, sign, k).weights.forEach((weight, offset) => {
      const at = place(k + offset - 2);
      if (weight !== 0) gain[at] = gain[at]! + (sign * weight) / peaks.length;
    });
  }
}

/** The waveform a probe looks at. */
export function probeWave(waves: Waves, probe: Probe): Float64Array {
  return "element" in probe ? waves.amps(probe.element) : waves.between(probe.from, probe.to);
}

/** How a probe's waveform hangs on the unknowns. */
export function probeFunctional(waves: Waves, probe: Probe): Functional {
  const { circuit } = waves;
  if (!("element" in probe)) {
    return {
      rows: [
        { row: waves.pointRow(probe.from), factor: 1 },
        { row: waves.pointRow(probe.to), factor: -1 },
      ],
      ports: [],
      histories: [],
    };
  }
  return currentFunctional(circuit, waves, probe.element);
}

function currentFunctional(circuit: Circuit, waves: Waves, id: string): Functional {
  const out: Functional = { rows: [], ports: [], histories: [] };
  const branch = circuit.branchRows.get(id);
  const port = waves.currentPort(id);
  if (branch !== undefined) out.rows.push({ row: branch, factor: 1 });
  else if (port !== undefined) out.ports.push({ port });
  else {
    const element = circuit.elements.get(id);
    if (element === undefined || element.kind === "current-source" || !("nodes" in element) || !Array.isArray(element.nodes)) return out;
    const [plus, minus] = element.nodes.map((point: string) => circuit.pointRows.get(point)!) as [number, number];
    let factor = 1 / (circuit.resistances.get(id) ?? 1);
    let far = minus;
    let near = plus;
    if (element.kind === "capacitor") {
      const inner = circuit.innerRows.get(id);
      if (inner !== undefined) {
        far = inner;
        factor = 1 / element.esrOhms!;
      } else {
        const state = circuit.stateIndex.get(id)!;
        near = circuit.states[state]!.plus;
        const companion = element.farads * waves.reductions[0]!.perSecond;
        factor = companion + (element.leakOhms === undefined ? 0 : 1 / element.leakOhms);
        out.histories.push({ state, factor: -companion });
      }
    }
    out.rows.push({ row: near, factor }, { row: far, factor: -factor });
  }
  return out;
}
