import type { Circuit } from "./circuit.ts";
import type { Trajectory } from "./march.ts";
import type { Reduction } from "./reduction.ts";
import { CircuitError } from "./solution.ts";

/** Waveforms of points and elements, computed from a trajectory when they are asked for. */
export class Waves {
  readonly circuit: Circuit;
  readonly trajectory: Trajectory;
  readonly reductions: readonly Reduction[];
  readonly stagesPerStep: number;
  private readonly rows = new Map<number, Float64Array>();
  private readonly currents = new Map<string, Float64Array>();

  constructor(circuit: Circuit, reductions: readonly Reduction[], trajectory: Trajectory, stagesPerStep: number) {
    this.circuit = circuit;
    this.reductions = reductions;
    this.trajectory = trajectory;
    this.stagesPerStep = stagesPerStep;
  }

  /** Waveform of an unknown by its row; -1, the reference, is zero. */
  row(row: number): Float64Array {
    let wave = this.rows.get(row);
    if (wave !== undefined) return wave;
    const { trajectory } = this;
    wave = new Float64Array(trajectory.stages);
    if (row >= 0) for (let stage = 0; stage < trajectory.stages; stage++) wave[stage] = this.valueAt(row, stage);
    this.rows.set(row, wave);
    return wave;
  }

  /** Value of an unknown at one stage. */
  valueAt(row: number, stage: number): number {
    if (row < 0) return 0;
    const { trajectory, reductions } = this;
    const { responses, width, states: n, ports: p, sources: s } = reductions[trajectory.levels[stage]!]!;
    const base = row * width;
    const state = stage * trajectory.states;
    let sum = 0;
    for (let k = 0; k < n; k++) sum += responses[base + k]! * trajectory.histories[state + k]!;
    for (let k = 0; k < p; k++) sum -= responses[base + n + k]! * trajectory.netAmps[stage * p + k]!;
    for (let k = 0; k < s; k++) sum += responses[base + n + p + k]! * trajectory.basis[stage * s + k]!;
    return sum;
  }

  /** Row of a point. @throws CircuitError `unknown-point` */
  pointRow(point: string): number {
    const row = this.circuit.pointRows.get(point);
    if (row === undefined) throw new CircuitError("unknown-point", `no element touches the point ${point}`, [point]);
    return row;
  }

  /** Voltage waveform between two points. */
  between(from: string, to: string): Float64Array {
    return difference(this.row(this.pointRow(from)), this.row(this.pointRow(to)));
  }

  /** Current waveform of a port by its index. */
  portAmps(port: number): Float64Array {
    const { trajectory } = this;
    const count = this.circuit.ports.length;
    const { lent } = this.circuit.ports[port]!;
    const wave = new Float64Array(trajectory.stages);
    for (let stage = 0; stage < trajectory.stages; stage++) {
      wave[stage] = trajectory.netAmps[stage * count + port]! + lent * trajectory.portVolts[stage * count + port]!;
    }
    return wave;
  }

  /** Voltage across a capacitor proper, without its series resistance. */
  storedVolts(id: string): Float64Array {
    const slot = this.circuit.states[this.circuit.stateIndex.get(id)!]!;
    return difference(this.row(slot.plus), this.row(slot.minus));
  }

  /**
   * Current waveform of an element, of a winding (`T1.primary`), or of a tube's further electrode (`V1.grid`, `V1.screen`).
   *
   * @throws CircuitError `bad-value` for a name that carries no current here
   */
  amps(id: string): Float64Array {
    let wave = this.currents.get(id);
    if (wave === undefined) {
      wave = this.computeAmps(id);
      this.currents.set(id, wave);
    }
    return wave;
  }

  private computeAmps(id: string): Float64Array {
    const { circuit, trajectory } = this;
    const branch = circuit.branchRows.get(id);
    if (branch !== undefined) return this.row(branch);
    const port = this.currentPort(id);
    if (port !== undefined) return this.portAmps(port);
    const element = circuit.elements.get(id);
    if (element === undefined || element.kind === "transformer" || element.kind === "triode" || element.kind === "pentode") {
      throw new CircuitError("bad-value", `no element or winding called ${id} carries a current here`, [], [id]);
    }
    if (element.kind === "current-source") return new Float64Array(trajectory.stages).fill(element.amps);
    if (element.kind === "capacitor") {
      const inner = circuit.innerRows.get(id);
      if (inner !== undefined)
        return scaled(difference(this.between(element.nodes[0], circuit.network.reference), this.row(inner)), 1 / element.esrOhms!);
      const wave = this.storedVolts(id);
      const slot = circuit.stateIndex.get(id)!;
      const leak = element.leakOhms === undefined ? 0 : 1 / element.leakOhms;
      return wave.map((volts, stage) => {
        const { perSecond } = this.reductions[trajectory.levels[stage]!]!;
        return element.farads * perSecond * (volts - trajectory.histories[stage * trajectory.states + slot]!) + leak * volts;
      });
    }
    return scaled(this.between(element.nodes[0], element.nodes[1]), 1 / circuit.resistances.get(id)!);
  }

  /** Port through which the current of a device, or of a tube's electrode (`V1.grid`), flows. */
  currentPort(id: string): number | undefined {
    const own = this.circuit.portIndex.get(id);
    if (own !== undefined) return own;
    const dot = id.lastIndexOf(".");
    if (dot < 0) return undefined;
    const port = this.circuit.portIndex.get(id.slice(0, dot));
    const element = this.circuit.elements.get(id.slice(0, dot));
    if (port === undefined || element === undefined) return undefined;
    const name = id.slice(dot + 1);
    if (element.kind === "triode") return name === "grid" ? port + 1 : name === "plate" ? port : undefined;
    if (element.kind !== "pentode") return undefined;
    const place = ["plate", "screen", "grid"].indexOf(name);
    return place < 0 ? undefined : port + place;
  }
}

/** a - b, value by value. */
function difference(a: Float64Array, b: Float64Array): Float64Array {
  const out = new Float64Array(a.length);
  for (let k = 0; k < a.length; k++) out[k] = a[k]! - b[k]!;
  return out;
}

function scaled(a: Float64Array, factor: number): Float64Array {
  for (let k = 0; k < a.length; k++) a[k] = a[k]! * factor;
  return a;
}
