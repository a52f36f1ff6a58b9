/** What an analysis gives back: plain data in SI units. */

/** Figures of one element (for a transformer: one entry a winding, id `element.winding`) over one period, or at DC. */
export interface ElementFigures {
  /** Voltage across the element, nodes[0] against nodes[1]. A triode or pentode reports plate against cathode. */
  meanVolts: number;
  rmsVolts: number;
  maxVolts: number;
  minVolts: number;
  /** Current from nodes[0] to nodes[1] (plate current of a tube; winding current into the start of a winding). */
  meanAmps: number;
  rmsAmps: number;
  maxAmps: number;
  minAmps: number;
  /** Mean power turned into heat (negative: delivered by a source). For a tube: plate plus screen plus grid. */
  watts: number;
  /** Tubes only: mean current and heat of each further electrode. */
  electrodes?: Record<string, { meanAmps: number; watts: number }>;
  /** Regulator tubes and thermistors: the state found. */
  state?: { lit?: boolean; kelvin?: number; ohms?: number };
}

/** Figures of one point against the reference. */
export interface PointFigures {
  meanVolts: number;
  /** RMS of the whole waveform. */
  rmsVolts: number;
  /** RMS of the waveform less its mean: what an AC voltmeter with a blocking capacitor shows. */
  acRmsVolts: number;
  maxVolts: number;
  minVolts: number;
}

/** One quantity that can be read off a solution, and whose sensitivity can be asked for. */
export type Probe =
  | { quantity: "dc-volts" | "ac-volts" | "ripple-volts" | "max-volts"; from: string; to: string }
  | { quantity: "dc-amps" | "rms-amps"; element: string };

/** A steady state: constant (hertz = 0) or periodic. */
export interface SteadyState {
  /** Frequency of the period, 0 for a constant operating point. */
  hertz: number;
  points: ReadonlyMap<string, PointFigures>;
  elements: ReadonlyMap<string, ElementFigures>;
  /** Waveforms of one period, sampled at `times` (seconds); absent at DC. `volts` are against the reference. */
  waveforms?: { times: Float64Array; volts: ReadonlyMap<string, Float64Array>; amps: ReadonlyMap<string, Float64Array> };
  /** Value of a probe: mean, RMS of the alternating part, peak to peak, highest, between two points; or an element's current. */
  read(probe: Probe): number;
  /** Largest sum of currents left over at any point, as a share of the largest current there. */
  currentResidual: number;
  iterations: number;
}

/** A parameter of an element, for sensitivities: e.g. { element: "R3", parameter: "ohms" }. */
export interface ParameterRef {
  element: string;
  /** `ohms`, `farads`, `henries`, `dcrOhms`, `esrOhms`, `leakOhms`, `rmsVolts`, `dcVolts`, `amps`, `perveance`, `emission`,
   *  `operatingVolts`, `zenerVolts`, or `winding.turns` / `winding.ohms` for a transformer. */
  parameter: string;
}

/** d ln-free sensitivities: change of each probe per relative change (dp/p = 1) of each parameter. */
export interface Sensitivities {
  probes: readonly Probe[];
  parameters: readonly ParameterRef[];
  /** Probe values at the nominal point. */
  values: Float64Array;
  /** Row-major [probe][parameter]: d(probe) / d(ln parameter), in the probe's unit. */
  matrix: Float64Array;
}

/** A network that cannot be solved says why and where. */
export class CircuitError extends Error {
  readonly code: "floating-point" | "source-loop" | "singular" | "no-convergence" | "bad-value" | "unknown-point";
  readonly points: readonly string[];
  readonly elements: readonly string[];
  constructor(code: CircuitError["code"], message: string, points: readonly string[] = [], elements: readonly string[] = []) {
    super(message);
    this.name = "CircuitError";
    this.code = code;
    this.points = points;
    this.elements = elements;
  }
}
