import type { Conditions } from "../circuit.ts";
import { compileNetwork } from "../compile.ts";
import { portScratch } from "../devices/port-device.ts";
import { elementPoints } from "../element-points.ts";
import type { Trajectory } from "../march.ts";
import { type Reduction, reduceCircuit, sourceBasis, sourceCount } from "../reduction.ts";
import type { ElementFigures, PointFigures, Probe, SteadyState } from "../solution.ts";
import { EXTRAPOLATE, STAGE_SHARE } from "../stage-scheme.ts";
import { SteadySolution } from "../steady-solution.ts";
import { alternatingRms, waveFigures } from "../wave-figures.ts";
import type { NetworkChange } from "./network-change.ts";
import type { Plant } from "./plant.ts";
import type { Unknowns } from "./unknowns.ts";

/** What a changed network's figures are read from. */
export interface ChangedInternals {
  plant: Plant;
  change: NetworkChange;
  unknowns: Unknowns;
  conditions: Conditions;
  ties: readonly string[];
  weights: Float64Array;
  iterations: number;
  /** Solves the network by marching, for what a coarse solution does not tell; absent where this solution is one of the march's scheme. */
  march?: () => SteadySolution;
  /** Resistance of a resistive element as it stands, in ohms. */
  ohmsOf: (id: string) => number | undefined;
}

/** Figures of a point, each worked out when it is read. */
class LazyPoint implements PointFigures {
  readonly meanVolts: number;
  private readonly wave: () => Float64Array;
  private readonly weights: Float64Array;
  private held: { rmsVolts: number; acRmsVolts: number; maxVolts: number; minVolts: number } | undefined;

  constructor(meanVolts: number, wave: () => Float64Array, weights: Float64Array) {
    this.meanVolts = meanVolts;
    this.wave = wave;
    this.weights = weights;
  }

  private get figures(): NonNullable<LazyPoint["held"]> {
    if (this.held === undefined) {
      const wave = this.wave();
      const { rms, max, min } = waveFigures(wave, this.weights, 2);
      this.held = { rmsVolts: rms, acRmsVolts: alternatingRms(wave, this.weights), maxVolts: max, minVolts: min };
    }
    return this.held;
  }

  get rmsVolts(): number {
    return this.figures.rmsVolts;
  }
  get acRmsVolts(): number {
    return this.figures.acRmsVolts;
  }
  get maxVolts(): number {
    return this.figures.maxVolts;
  }
  get minVolts(): number {
    return this.figures.minVolts;
  }
}

/** Steady state of a changed network. Figures are worked out when they are read; those of elements cost most. */
export class ChangedSteady implements SteadyState {
  readonly hertz: number;
  readonly iterations: number;
  private readonly internals: ChangedInternals;
  private heldPoints: Map<string, PointFigures> | undefined;
  private heldWhole: SteadySolution | undefined;

  constructor(internals: ChangedInternals) {
    this.internals = internals;
    this.hertz = internals.plant.circuit.hertz;
    this.iterations = internals.iterations;
  }

  get points(): ReadonlyMap<string, PointFigures> {
    if (this.heldPoints !== undefined) return this.heldPoints;
    const { change, unknowns, weights, plant } = this.internals;
    const points = new Map<string, PointFigures>();
    const add = (name: string): void => {
      const row = change.pointRow(name)!;
      if (!points.has(name)) points.set(name, new LazyPoint(unknowns.mean(row), () => unknowns.wave(row), weights));
    };
    add(plant.circuit.network.reference);
    for (const element of change.elements.values()) for (const point of elementPoints(element)) add(point);
    this.heldPoints = points;
    return points;
  }

  get elements(): ReadonlyMap<string, ElementFigures> {
    return this.whole.elements;
  }

  get waveforms(): NonNullable<SteadyState["waveforms"]> {
    return this.whole.waveforms;
  }

  get currentResidual(): number {
    return this.whole.currentResidual;
  }

  read(probe: Probe): number {
    const { change, unknowns, weights } = this.internals;
    if ("element" in probe) {
      const wave = this.ampsOf(probe.element);
      if (wave === undefined) return this.whole.read(probe);
      const figures = waveFigures(wave, weights, 2);
      return probe.quantity === "dc-amps" ? figures.mean : figures.rms;
    }
    const [plus, minus] = [change.pointRow(probe.from), change.pointRow(probe.to)];
    if (plus === undefined || minus === undefined || !this.points.has(probe.from) || !this.points.has(probe.to))
      return this.whole.read(probe);
    if (probe.quantity === "dc-volts") return unknowns.mean(plus) - unknowns.mean(minus);
    const wave = unknowns.wave(plus, minus);
    if (probe.quantity === "ac-volts") return alternatingRms(wave, weights);
    const { max, min } = waveFigures(wave, weights, 2);
    return probe.quantity === "max-volts" ? max : max - min;
  }

  /** Current waveform of what is a resistance or a branch; undefined for the rest. */
  private ampsOf(id: string): Float64Array | undefined {
    const { change, unknowns, ohmsOf } = this.internals;
    const element = change.elements.get(id);
    const branch = element === undefined || element.kind !== "transformer" ? change.branchRow(id) : undefined;
    if (branch !== undefined && (element !== undefined || id.includes("."))) return unknowns.wave(branch);
    const ohms = ohmsOf(id);
    if (element === undefined || ohms === undefined || !("nodes" in element) || !Array.isArray(element.nodes)) return undefined;
    const [from, to] = element.nodes as readonly [string, string];
    return unknowns.wave(change.pointRow(from)!, change.pointRow(to)!).map((volts) => volts / ohms);
  }

  /** The same steady state (found anew by marching if this is a coarse one) with everything that `solveSteady` knows, for warm starts, sensitivities and elements' figures. */
  get whole(): SteadySolution {
    this.heldWhole ??= this.internals.march === undefined ? wholeOf(this.internals) : this.internals.march();
    return this.heldWhole;
  }
}

/** Lays a solved changed network out as a march would have left it. */
function wholeOf({ plant, change, unknowns, conditions, ties, weights, iterations }: ChangedInternals): SteadySolution {
  const circuit = compileNetwork(change.network, conditions, ties, plant.circuit.hertz);
  const { steps, stepSeconds } = plant.symbol;
  const reduction: Reduction = reduceCircuit(circuit, 1 / (STAGE_SHARE * stepSeconds));
  const stages = 2 * steps;
  const states = circuit.states.length;
  const ports = circuit.ports.length;
  const sources = sourceCount(circuit);
  const trajectory: Trajectory = {
    stages,
    states,
    weights,
    times: Float64Array.from({ length: stages }, (_, stage) => ((stage >> 1) + ((stage & 1) === 0 ? STAGE_SHARE : 1)) * stepSeconds),
    levels: new Uint8Array(stages),
    histories: new Float64Array(stages * states),
    results: new Float64Array(stages * states),
    netAmps: new Float64Array(stages * ports),
    portVolts: new Float64Array(stages * ports),
    basis: new Float64Array(stages * sources),
  };
  for (let stage = 0; stage < stages; stage++) sourceBasis(circuit, trajectory.times[stage]!, trajectory.basis, stage * sources);
  // Rows of the circuit in those of the change: by point, or by the branch current they are.
  const rowOf = (row: number): number => (row < 0 ? -1 : change.rowOf(circuit.rowNames[row]!));
  circuit.states.forEach((slot, k) => {
    const wave = unknowns.wave(rowOf(slot.plus), rowOf(slot.minus));
    for (let step = 0; step < steps; step++) {
      const start = wave[(2 * step - 1 + stages) % stages]!;
      const [first, second] = [wave[2 * step]!, wave[2 * step + 1]!];
      trajectory.results[2 * step * states + k] = first;
      trajectory.results[(2 * step + 1) * states + k] = second;
      trajectory.histories[2 * step * states + k] = start;
      trajectory.histories[(2 * step + 1) * states + k] = start + EXTRAPOLATE * (first - start);
    }
  });
  circuit.ports.forEach((port, k) => {
    const wave = unknowns.wave(rowOf(port.plus), rowOf(port.minus));
    for (let stage = 0; stage < stages; stage++) trajectory.portVolts[stage * ports + k] = wave[stage]!;
  });
  const scratch = portScratch(ports);
  for (let stage = 0; stage < stages; stage++) {
    scratch.volts.set(trajectory.portVolts.subarray(stage * ports, (stage + 1) * ports));
    for (const device of circuit.devices) device.evaluate(scratch, circuit.portIndex.get(device.id)!);
    for (let k = 0; k < ports; k++) trajectory.netAmps[stage * ports + k] = scratch.amps[k]! - circuit.ports[k]!.lent * scratch.volts[k]!;
  }
  const last = (stages - 1) * states;
  return new SteadySolution({
    circuit,
    reductions: [reduction],
    trajectory,
    state: trajectory.results.slice(last, last + states),
    portVolts: trajectory.portVolts.slice((stages - 1) * ports, stages * ports),
    plan: { stepSeconds: [stepSeconds], levels: new Uint8Array(steps) },
    iterations,
  });
}
