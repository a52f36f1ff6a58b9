import type { Circuit } from "./circuit.ts";
import { Marcher, type Plan, type Trajectory } from "./march.ts";
import { PortNewton } from "./port-newton.ts";
import type { Reduction, StageReduction } from "./reduction.ts";
import { factorizeSmall, solveSmall } from "./small-lu.ts";

/** Devices whose voltages hardly move within a period of a chassis without signal. Whether they do is checked by the full march. */
const QUIET_KINDS: ReadonlySet<string> = new Set(["triode", "pentode", "zener", "gas-regulator"]);
/** A quiet port has not moved while its mean is within this many volts, and a share of itself, of where it was linearised. */
const STILL_VOLTS = 1e-3;
/** A port is quiet while its current stays within this share, and these amperes, of its tangent. */
const TANGENT_SHARE = 0.005;
const TANGENT_AMPS = 1e-6;
/** Stages from one that is looked at to the next. */
const STRIDE = 7;

/** Voltages of the quiet ports as rows over [stores; -j of the active ports; sources]. */
interface Folded {
  reduction: StageReduction;
  quietRows: Float64Array;
}

/**
 * A circuit whose quiet ports (tubes, regulators) are replaced by their tangents and folded into the linear network, so that
 * a stage solves for the rectifiers alone. It serves to find the periodic state; what is found is judged by a full march.
 */
export class QuietFold {
  readonly marcher: Marcher;
  /** Voltages in volts at which the quiet ports are linearised, by port of the whole circuit; other entries are not used. */
  readonly volts: Float64Array;
  private readonly whole: Marcher;
  private readonly active: readonly number[];
  private readonly quiet: readonly number[];
  private readonly newton: PortNewton;
  private readonly folded = new Map<number, Folded>();

  /** @returns undefined when the circuit has no quiet port */
  static of(whole: Marcher): QuietFold | undefined {
    const { circuit } = whole;
    const isQuiet = (id: string): boolean => QUIET_KINDS.has(circuit.elements.get(id)?.kind ?? "");
    return circuit.devices.some(({ id }) => isQuiet(id)) ? new QuietFold(whole, isQuiet) : undefined;
  }

  private constructor(whole: Marcher, isQuiet: (id: string) => boolean) {
    const { circuit } = whole;
    this.whole = whole;
    this.newton = new PortNewton(circuit);
    this.volts = new Float64Array(circuit.ports.length);
    const active: number[] = [];
    const quiet: number[] = [];
    const portIndex = new Map<string, number>();
    for (const device of circuit.devices) {
      const at = circuit.portIndex.get(device.id)!;
      const into = isQuiet(device.id) ? quiet : active;
      if (into === active) portIndex.set(device.id, active.length);
      for (let k = 0; k < device.ports.length; k++) into.push(at + k);
    }
    this.active = active;
    this.quiet = quiet;
    const view: Circuit = {
      ...circuit,
      devices: circuit.devices.filter(({ id }) => !isQuiet(id)),
      ports: active.map((port) => circuit.ports[port]!),
      portIndex,
      fluxPorts: circuit.fluxPorts.map(({ device }) => ({ port: portIndex.get(device.id)!, device })),
    };
    this.marcher = new Marcher(view, (stepSeconds) => this.fold(stepSeconds).reduction);
  }

  /** Takes port voltages of the whole circuit as the point to start from. */
  start(volts: Float64Array): void {
    this.linearize(volts);
    this.active.forEach((port, k) => {
      this.marcher.newton.scratch.volts[k] = volts[port]!;
    });
  }

  /** Hands port voltages at the end of the folded march to the whole circuit's Newton. */
  handOver(): void {
    const { volts } = this.whole.newton.scratch;
    for (const port of this.quiet) volts[port] = this.volts[port]!;
    this.active.forEach((port, k) => {
      volts[port] = this.marcher.newton.scratch.volts[k]!;
    });
  }

  private linearize(volts: Float64Array): void {
    this.volts.set(volts);
    this.newton.scratch.volts.set(volts);
    this.newton.evaluateNet();
    this.folded.clear();
  }

  /**
   * Linearises anew at the means of a folded march, unless they are where it was linearised already. An error there enters
   * what is found in second order only.
   *
   * @param share relative change of a port's voltage that counts as none
   * @returns whether any quiet port had moved away from where it was linearised
   */
  relinearize(plan: Plan, record: Trajectory, share: number): boolean {
    const next = Float64Array.from(this.volts);
    let moved = false;
    const { states, stages, weights } = record;
    const ports = this.active.length;
    const sources = record.basis.length / stages;
    const width = states + ports + sources;
    // Rows differ from step size to step size; so do the sums.
    plan.stepSeconds.forEach((stepSeconds, level) => {
      const sums = new Float64Array(width);
      for (let stage = 0; stage < stages; stage++) {
        if (record.levels[stage] !== level) continue;
        const weight = weights[stage]!;
        for (let k = 0; k < states; k++) sums[k] = sums[k]! + weight * record.histories[stage * states + k]!;
        for (let k = 0; k < ports; k++) sums[states + k] = sums[states + k]! - weight * record.netAmps[stage * ports + k]!;
        for (let k = 0; k < sources; k++)
          sums[states + ports + k] = sums[states + ports + k]! + weight * record.basis[stage * sources + k]!;
      }
      const { quietRows, reduction } = this.fold(stepSeconds);
      const linear = reduction.states;
      const columns = linear + ports + sources;
      this.quiet.forEach((port, row) => {
        let mean = level === 0 ? 0 : next[port]!;
        for (let k = 0; k < columns; k++) mean += quietRows[row * columns + k]! * sums[k < linear ? k : k + states - linear]!;
        next[port] = mean;
      });
    });
    for (const port of this.quiet) {
      const change = Math.abs(next[port]! - this.volts[port]!);
      if (!(change <= STILL_VOLTS + share * Math.abs(next[port]!))) moved = true;
    }
    if (moved) this.linearize(next);
    return moved;
  }

  /** Whether the currents of the quiet ports follow their tangents throughout a march of the whole circuit. */
  wasQuiet(record: Trajectory): boolean {
    const { newton, quiet } = this;
    const p = newton.size;
    for (let stage = 0; stage < record.stages; stage += STRIDE) {
      const at = stage * p;
      for (const port of quiet) {
        let tangent = newton.netAmps[port]!;
        for (const other of quiet) {
          const slope = newton.netSlopes[port * p + other]!;
          if (slope !== 0) tangent += slope * (record.portVolts[at + other]! - this.volts[other]!);
        }
        const own = Math.abs(newton.netAmps[port]! + this.whole.circuit.ports[port]!.lent * this.volts[port]!);
        if (!(Math.abs(record.netAmps[at + port]! - tangent) <= TANGENT_SHARE * own + TANGENT_AMPS)) return false;
      }
    }
    return true;
  }

  private fold(stepSeconds: number): Folded {
    let found = this.folded.get(stepSeconds);
    if (found === undefined) {
      found = this.compute(this.whole.reduction(stepSeconds));
      this.folded.set(stepSeconds, found);
    }
    return found;
  }

  private compute(whole: Reduction): Folded {
    const { active, quiet, newton } = this;
    const { states: n, ports: p, sources: s } = whole;
    const a = active.length;
    const q = quiet.length;
    const columns = n + a + s;
    // Tangent of a quiet port: j = base + slopes v.
    const base = new Float64Array(q);
    const slopes = new Float64Array(q * q);
    for (let i = 0; i < q; i++) {
      let sum = newton.netAmps[quiet[i]!]!;
      for (let j = 0; j < q; j++) {
        const slope = newton.netSlopes[quiet[i]! * p + quiet[j]!]!;
        slopes[i * q + j] = slope;
        sum -= slope * this.volts[quiet[j]!]!;
      }
      base[i] = sum;
    }
    const spread = (out: Float64Array, row: number, from: number, state: Float64Array, port: Float64Array, source: Float64Array): void => {
      for (let k = 0; k < n; k++) out[row * columns + k] = state[from * n + k]!;
      for (let k = 0; k < a; k++) out[row * columns + n + k] = port[from * p + active[k]!]!;
      for (let k = 0; k < s; k++) out[row * columns + n + a + k] = source[from * s + k]!;
    };
    const matrix = new Float64Array(q * q);
    const quietRows = new Float64Array(q * columns);
    for (let i = 0; i < q; i++) {
      spread(quietRows, i, quiet[i]!, whole.portState, whole.portPort, whole.portSource);
      matrix[i * q + i] = 1;
      for (let j = 0; j < q; j++) {
        const z = whole.portPort[quiet[i]! * p + quiet[j]!]!;
        if (z === 0) continue;
        quietRows[i * columns + n + a] = quietRows[i * columns + n + a]! - z * base[j]!;
        for (let k = 0; k < q; k++) if (slopes[j * q + k] !== 0) matrix[i * q + k] = matrix[i * q + k]! + z * slopes[j * q + k]!;
      }
    }
    const pivots = new Int32Array(q);
    factorizeSmall(q, matrix, pivots);
    solveSmall(q, matrix, pivots, quietRows, columns);
    const amps = new Float64Array(q * columns);
    for (let i = 0; i < q; i++) {
      for (let j = 0; j < q; j++) {
        const slope = slopes[i * q + j]!;
        if (slope !== 0)
          for (let c = 0; c < columns; c++) amps[i * columns + c] = amps[i * columns + c]! + slope * quietRows[j * columns + c]!;
      }
      amps[i * columns + n + a] = amps[i * columns + n + a]! + base[i]!;
    }
    const folded = (rows: readonly number[], state: Float64Array, port: Float64Array, source: Float64Array): Float64Array => {
      const out = new Float64Array(rows.length * columns);
      rows.forEach((from, row) => {
        spread(out, row, from, state, port, source);
        for (let i = 0; i < q; i++) {
          const z = port[from * p + quiet[i]!]!;
          if (z !== 0) for (let c = 0; c < columns; c++) out[row * columns + c] = out[row * columns + c]! - z * amps[i * columns + c]!;
        }
      });
      return out;
    };
    const part = (rows: Float64Array, from: number, count: number): Float64Array => {
      const height = rows.length / columns;
      const out = new Float64Array(height * count);
      for (let row = 0; row < height; row++) out.set(rows.subarray(row * columns + from, row * columns + from + count), row * count);
      return out;
    };
    const ports = folded(active, whole.portState, whole.portPort, whole.portSource);
    const stores = folded(
      Array.from({ length: n }, (_, k) => k),
      whole.stateState,
      whole.statePort,
      whole.stateSource,
    );
    const reduction: StageReduction = {
      perSecond: whole.perSecond,
      states: n,
      ports: a,
      sources: s,
      portState: part(ports, 0, n),
      portPort: part(ports, n, a),
      portSource: part(ports, n + a, s),
      stateState: part(stores, 0, n),
      statePort: part(stores, n, a),
      stateSource: part(stores, n + a, s),
    };
    return { reduction, quietRows };
  }
}
