/** Holds a solution of the engine against a stored record; every figure that strays comes back as one line of text. */
import type { ElementFigures, PointFigures, Sensitivities, SteadyState } from "@underchassis/calc";
import { type CircuitCase, DEFAULT_TOLERANCE, type SensitivityAnalysis, type Tolerance } from "./oracle/case.ts";
import type { ElementRecord, OracleRecord } from "./oracle/record.ts";
import type { Figures } from "./oracle/trace-figures.ts";

/** One compared figure. `share` is the error as a share of what is allowed: above 1 it strays. */
export interface Compared {
  where: string;
  found: number;
  expected: number;
  allowed: number;
  share: number;
}

/** Below this share of the largest value of the same waveform a difference is the simulator's own noise. */
const NOISE = 1e-4;
/** An extreme near zero (the foot of a cusp) may miss by this part of the peak tolerance, taken of the whole swing. */
const SWING = 0.25;
/** Points whose whole swing is below this (volts), and branches below this (amperes), are compared absolutely; heat likewise. */
const LEAST_VOLTS = 1e-4;
const LEAST_AMPS = 1e-8;
const LEAST_WATTS = 1e-6;

export class Comparison {
  readonly figures: Compared[] = [];

  add(where: string, found: number, expected: number, allowed: number): void {
    const error = Math.abs(found - expected);
    this.figures.push({ where, found, expected, allowed, share: Number.isFinite(error) ? error / allowed : Number.POSITIVE_INFINITY });
  }

  /** Lines for what strays, worst first. */
  strays(): string[] {
    return this.figures
      .filter((figure) => !(figure.share <= 1))
      .sort((a, b) => b.share - a.share)
      .map(
        ({ where, found, expected, share }) =>
          `${where}: ${found.toPrecision(6)}, expected ${expected.toPrecision(6)} (${share.toFixed(2)} x allowed)`,
      );
  }
}

export function toleranceOf(circuit: CircuitCase): Tolerance {
  return circuit.tolerance ?? DEFAULT_TOLERANCE;
}

function size(figures: Figures): number {
  return Math.max(Math.abs(figures.max), Math.abs(figures.min));
}

function addPoint(comparison: Comparison, point: string, found: PointFigures, expected: Figures, tolerance: Tolerance): void {
  const noise = NOISE * size(expected) + LEAST_VOLTS;
  const ripple = expected.max - expected.min;
  comparison.add(`${point} mean volts`, found.meanVolts, expected.mean, tolerance.mean * Math.abs(expected.mean) + noise);
  comparison.add(`${point} rms volts`, found.rmsVolts, expected.rms, tolerance.mean * expected.rms + noise);
  comparison.add(`${point} ripple volts`, found.maxVolts - found.minVolts, ripple, tolerance.ripple * ripple + noise / 10);
  comparison.add(
    `${point} max volts`,
    found.maxVolts,
    expected.max,
    tolerance.peak * Math.abs(expected.max) + SWING * tolerance.peak * ripple + noise,
  );
  comparison.add(
    `${point} min volts`,
    found.minVolts,
    expected.min,
    tolerance.peak * Math.abs(expected.min) + SWING * tolerance.peak * ripple + noise,
  );
}

function addElement(comparison: Comparison, id: string, found: ElementFigures, expected: ElementRecord, tolerance: Tolerance): void {
  const { volts, amps } = expected;
  const [noiseVolts, noiseAmps] = [NOISE * size(volts) + LEAST_VOLTS, NOISE * size(amps) + LEAST_AMPS];
  const swing = amps.max - amps.min;
  const voltSwing = volts.max - volts.min;
  comparison.add(`${id} mean volts across`, found.meanVolts, volts.mean, tolerance.mean * Math.abs(volts.mean) + noiseVolts);
  comparison.add(
    `${id} max volts across`,
    found.maxVolts,
    volts.max,
    tolerance.peak * Math.abs(volts.max) + SWING * tolerance.peak * voltSwing + noiseVolts,
  );
  comparison.add(
    `${id} min volts across`,
    found.minVolts,
    volts.min,
    tolerance.peak * Math.abs(volts.min) + SWING * tolerance.peak * voltSwing + noiseVolts,
  );
  comparison.add(`${id} mean amps`, found.meanAmps, amps.mean, tolerance.mean * Math.abs(amps.mean) + 5 * noiseAmps);
  comparison.add(`${id} rms amps`, found.rmsAmps, amps.rms, 2 * tolerance.mean * amps.rms + 5 * noiseAmps);
  comparison.add(
    `${id} max amps`,
    found.maxAmps,
    amps.max,
    tolerance.peak * Math.abs(amps.max) + SWING * tolerance.peak * swing + noiseAmps,
  );
  comparison.add(
    `${id} min amps`,
    found.minAmps,
    amps.min,
    tolerance.peak * Math.abs(amps.min) + SWING * tolerance.peak * swing + noiseAmps,
  );
  const apparent = volts.rms * amps.rms;
  comparison.add(`${id} watts`, found.watts, expected.watts, 4 * tolerance.mean * Math.abs(expected.watts) + 1e-3 * apparent + LEAST_WATTS);
  for (const [name, mean] of Object.entries(expected.electrodes ?? {})) {
    const electrode = found.electrodes?.[name];
    comparison.add(`${id} ${name} mean amps`, electrode?.meanAmps ?? Number.NaN, mean, tolerance.mean * Math.abs(mean) + LEAST_AMPS);
  }
}

/** All points and all elements of a steady state or an operating point. */
export function compareSteady(record: OracleRecord, solution: SteadyState, tolerance: Tolerance): Comparison {
  const comparison = new Comparison();
  for (const [point, expected] of Object.entries(record.points ?? {})) {
    const found = solution.points.get(point);
    if (found === undefined) comparison.add(`${point} is missing`, Number.NaN, expected.mean, 1);
    else addPoint(comparison, point, found, expected, tolerance);
  }
  for (const [id, expected] of Object.entries(record.elements ?? {})) {
    const found = solution.elements.get(id);
    if (found === undefined) comparison.add(`${id} is missing`, Number.NaN, expected.amps.mean, 1);
    else addElement(comparison, id, found, expected, tolerance);
  }
  return comparison;
}

/**
 * Sensitivities: three percent of each, plus half a percent of the largest of the same probe; `rippleShare` instead of the three
 * percent for ripple, whose feet are corners that a coarse grid of steps does not hit.
 */
export function compareSensitivities(
  analysis: SensitivityAnalysis,
  record: OracleRecord,
  found: Sensitivities,
  rippleShare = 0.03,
): Comparison {
  const comparison = new Comparison();
  const columns = analysis.parameters.length;
  analysis.probes.forEach((probe, row) => {
    const expected = record.sensitivities?.[row] ?? [];
    const largest = Math.max(...expected.map(Math.abs));
    const where = "from" in probe ? probe.from : probe.element;
    analysis.parameters.forEach(({ element, parameter }, column) => {
      const reference = expected[column] ?? Number.NaN;
      const allowed = (probe.quantity === "ripple-volts" ? rippleShare : 0.03) * Math.abs(reference) + 0.005 * largest;
      const value = found.matrix[row * columns + column] ?? Number.NaN;
      comparison.add(`${where} ${probe.quantity} by ${element} ${parameter}`, value, reference, allowed);
    });
  });
  return comparison;
}
