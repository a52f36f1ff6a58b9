/** One circuit of the cross-check: what is built, which analysis is asked for, how closely the engine must follow. */
import type { Network, ParameterRef, Probe } from "@underchassis/calc";

/** Relative tolerances. Wider than the defaults only with a reason. */
export interface Tolerance {
  mean: number;
  ripple: number;
  peak: number;
  reason?: string;
  /** With this many steps a period the usual tolerance holds: the reason is the step, nothing else. */
  holdsAtSteps?: number;
}

export const DEFAULT_TOLERANCE: Tolerance = { mean: 0.003, ripple: 0.03, peak: 0.02 };

/**
 * A choke whose current stops: the rectifier's point snaps to the output within tens of microseconds, less than the engine's
 * step, so the foot of the notch and the small current in the iron loss come out less exactly.
 */
export const STOPPING_CHOKE: Tolerance = {
  mean: 0.006,
  ripple: 0.03,
  peak: 0.07,
  reason: "choke current stops; the notch that follows is shorter than a step",
  holdsAtSteps: 1536,
};

/**
 * Periodic steady state of a network with a sine source. `settlePeriods`: length of one settling run, or of the only run when
 * that starts from the operating point (a stage with a small signal, whose memory is short against that run).
 */
export interface SteadyAnalysis {
  kind: "steady";
  hertz: number;
  settlePeriods?: number;
  fromOperatingPoint?: boolean;
}

/** Constant operating point. */
export interface DcAnalysis {
  kind: "dc";
}

/** From the given capacitor voltages (others, and all coil currents, zero) for `durationSeconds`. */
export interface TransientAnalysis {
  kind: "transient";
  durationSeconds: number;
  maxStepSeconds: number;
  initialVolts?: Readonly<Record<string, number>>;
  /** Instants at which point voltages are compared. */
  sampleSeconds: readonly number[];
}

/** Time for each named point to fall to `toVolts` from the given capacitor voltages, sources gone. */
export interface DischargeAnalysis {
  kind: "discharge";
  durationSeconds: number;
  maxStepSeconds: number;
  initialVolts: Readonly<Record<string, number>>;
  toVolts: number;
  points: readonly string[];
}

/** Complex gain from a unit signal in series with source `input`. */
export interface SmallSignalAnalysis {
  kind: "small-signal";
  input: string;
  outputs: readonly string[];
  hertz: readonly number[];
}

/** Change of probes (points against the reference) for relative changes of parameters. */
export interface SensitivityAnalysis {
  kind: "sensitivity";
  of: SteadyAnalysis | DcAnalysis;
  probes: readonly Probe[];
  parameters: readonly ParameterRef[];
}

/** Resistance between pairs of points (positive lead first) with the power off. */
export interface OhmmeterAnalysis {
  kind: "ohmmeter";
  pairs: readonly (readonly [string, string])[];
  testVolts: number;
  maxAmps: number;
}

export type Analysis =
  | OhmmeterAnalysis
  | SensitivityAnalysis
  | SteadyAnalysis
  | DcAnalysis
  | TransientAnalysis
  | DischargeAnalysis
  | SmallSignalAnalysis;

export interface CircuitCase {
  name: string;
  network: Network;
  analysis: Analysis;
  tolerance?: Tolerance;
  /** State of each gas regulator tube, which the simulator cannot find by itself; the record is checked against it. */
  lit?: Readonly<Record<string, boolean>>;
  /** A hand estimate of one point's mean volts, from the formula named, with its own tolerance (relative). */
  plausible?: { point: string; volts: number; within: number; formula: string };
}
