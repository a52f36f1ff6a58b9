import type { BorrowedInverse } from "./borrowed-inverse.ts";
import type { Circuit } from "./circuit.ts";
import { elementFigures } from "./element-figures.ts";
import type { Plan, Trajectory } from "./march.ts";
import type { Reduction } from "./reduction.ts";
import { currentResidual } from "./residual.ts";
import type { ElementFigures, PointFigures, Probe, SteadyState } from "./solution.ts";
import { alternatingRms, waveFigures } from "./wave-figures.ts";
import { Waves } from "./waves.ts";

/** What a steady state was computed from; kept for warm starts and sensitivities. */
export interface SteadyInternals {
  circuit: Circuit;
  reductions: readonly Reduction[];
  trajectory: Trajectory;
  /** Stores at the start of the period, or at the constant point. */
  state: Float64Array;
  /** Port voltages to start a solve of the same circuit from. */
  portVolts: Float64Array;
  /** Steps of the period; absent at DC. */
  plan?: Plan;
  /** d state(T) / d state(0), from this or a coarser plan; absent at DC. */
  transition?: Float64Array;
  /** The inverse made of it, mended on the way. */
  inverse?: BorrowedInverse;
  /** The last solution with few steps on the way to this one; neighbours start from there. Absent at DC. */
  coarse?: SteadyInternals;
  iterations: number;
}

/** A steady state whose figures are worked out when they are read. */
export class SteadySolution implements SteadyState {
  readonly hertz: number;
  readonly iterations: number;
  readonly internals: SteadyInternals;
  readonly waves: Waves;
  private heldPoints: Map<string, PointFigures> | undefined;
  private heldElements: Map<string, ElementFigures> | undefined;
  private heldWaveforms: NonNullable<SteadyState["waveforms"]> | undefined;
  private heldResidual: number | undefined;

  constructor(internals: SteadyInternals) {
    this.internals = internals;
    this.hertz = internals.plan === undefined ? 0 : internals.circuit.hertz;
    this.iterations = internals.iterations;
    this.waves = new Waves(internals.circuit, internals.reductions, internals.trajectory, internals.plan === undefined ? 1 : 2);
  }

  get points(): ReadonlyMap<string, PointFigures> {
    if (this.heldPoints !== undefined) return this.heldPoints;
    const points = new Map<string, PointFigures>();
    const { weights } = this.waves.trajectory;
    for (const [name, row] of this.internals.circuit.pointRows) {
      const wave = this.waves.row(row);
      const figures = waveFigures(wave, weights, this.waves.stagesPerStep);
      points.set(name, {
        meanVolts: figures.mean,
        rmsVolts: figures.rms,
        acRmsVolts: alternatingRms(wave, weights),
        maxVolts: figures.max,
        minVolts: figures.min,
      });
    }
    this.heldPoints = points;
    return points;
  }

  get elements(): ReadonlyMap<string, ElementFigures> {
    if (this.heldElements !== undefined) return this.heldElements;
    const elements = new Map<string, ElementFigures>();
    for (const element of this.internals.circuit.elements.values()) {
      for (const [id, figures] of elementFigures(this.waves, element)) elements.set(id, figures);
    }
    this.heldElements = elements;
    return elements;
  }

  get waveforms(): NonNullable<SteadyState["waveforms"]> {
    if (this.heldWaveforms !== undefined) return this.heldWaveforms;
    const stride = this.waves.stagesPerStep;
    const ends = (wave: Float64Array): Float64Array => wave.filter((_, stage) => (stage + 1) % stride === 0);
    const volts = new Map<string, Float64Array>();
    for (const [name, row] of this.internals.circuit.pointRows) volts.set(name, ends(this.waves.row(row)));
    const amps = new Map<string, Float64Array>();
    for (const id of this.elements.keys()) amps.set(id, ends(this.waves.amps(id)));
    this.heldWaveforms = { times: ends(this.waves.trajectory.times), volts, amps };
    return this.heldWaveforms;
  }

  get currentResidual(): number {
    this.heldResidual ??= currentResidual(this.internals.circuit, this.waves);
    return this.heldResidual;
  }

  read(probe: Probe): number {
    const { weights } = this.waves.trajectory;
    const stride = this.waves.stagesPerStep;
    if ("element" in probe) {
      const figures = waveFigures(this.waves.amps(probe.element), weights, stride);
      return probe.quantity === "dc-amps" ? figures.mean : figures.rms;
    }
    const wave = this.waves.between(probe.from, probe.to);
    if (probe.quantity === "ac-volts") return alternatingRms(wave, weights);
    const figures = waveFigures(wave, weights, stride);
    if (probe.quantity === "dc-volts") return figures.mean;
    return probe.quantity === "max-volts" ? figures.max : figures.max - figures.min;
  }
}
