import type { Circuit } from "./circuit.ts";
import { type Complex, solveComplex } from "./complex-lu.ts";
import type { Network } from "./network.ts";
import { PortNewton } from "./port-newton.ts";
import { CircuitError, type SteadyState } from "./solution.ts";
import { operatingPoint } from "./steady.ts";
import { SteadySolution } from "./steady-solution.ts";

export interface SmallSignalOptions {
  /** The voltage or current source that carries the signal, of 1 V or 1 A. */
  input: string;
  /** Points whose response against the reference is asked for. */
  outputs: readonly string[];
  hertz: readonly number[];
  /** State to linearise about; the operating point when absent. A periodic one counts with its mean slopes. */
  operating?: SteadyState;
  /** Range in hertz in which corners are looked for; 0.1 Hz to 10 MHz unless given. */
  range?: readonly [low: number, high: number];
}

export interface SmallSignalResponse {
  /** Volts at the point per volt (or ampere) of the input, at each frequency. */
  gain: Complex[];
  /** Magnitude of the impedance in ohms seen into the point with the signal at zero, at each frequency. */
  outputOhms: number[];
  /** Largest gain in the range, the middle (on a log scale) of where it holds within 1 %, and where it falls to 0.7071 of it below and above; absent where it does not. */
  corners: { midGain: number; midHertz: number; lowHertz?: number; highHertz?: number };
}

/** Mean slopes of all ports along a solution, without the lent conductances; row-major. */
function meanSlopes(solution: SteadySolution): Float64Array {
  const { circuit } = solution.internals;
  const { trajectory, reductions } = solution.waves;
  const newton = new PortNewton(circuit);
  const p = circuit.ports.length;
  const out = new Float64Array(p * p);
  for (let stage = 0; stage < trajectory.stages; stage++) {
    newton.scratch.volts.set(trajectory.portVolts.subarray(stage * p, (stage + 1) * p));
    newton.setFlux(
      trajectory.histories.subarray(stage * trajectory.states, (stage + 1) * trajectory.states),
      circuit.states.length,
      reductions[trajectory.levels[stage]!]!.perSecond,
    );
    newton.evaluate();
    for (let k = 0; k < out.length; k++) out[k] = out[k]! + trajectory.weights[stage]! * newton.scratch.slopes[k]!;
  }
  return out;
}

/** The linearised network, ready to be solved at any frequency. */
class LinearNetwork {
  private readonly circuit: Circuit;
  private readonly slopes: Float64Array;
  private readonly chokes: { port: number; ohms: number; henries: number }[];
  private readonly drive: Float64Array;

  constructor(solution: SteadySolution, input: string) {
    this.circuit = solution.internals.circuit;
    this.slopes = meanSlopes(solution);
    this.chokes = this.circuit.fluxPorts.map(({ port, device }) => {
      const amps = solution.read({ quantity: "dc-amps", element: device.id });
      const step = 1e-6 * Math.max(1, Math.abs(amps));
      return { port, ohms: device.flux.ohms, henries: (device.flux.fluxAt(amps + step) - device.flux.fluxAt(amps - step)) / (2 * step) };
    });
    this.drive = new Float64Array(this.circuit.size);
    const element = this.circuit.elements.get(input);
    if (element?.kind === "voltage-source") this.drive[this.circuit.branchRows.get(input)!] = 1;
    else if (element?.kind === "current-source") {
      const [from, to] = element.nodes.map((point) => this.circuit.pointRows.get(point)!) as [number, number];
      if (from >= 0) this.drive[from] = -1;
      if (to >= 0) this.drive[to] = 1;
    } else throw new CircuitError("bad-value", `${input} is no source that could carry a signal`, [], [input]);
  }

  row(point: string): number {
    const row = this.circuit.pointRows.get(point);
    if (row === undefined) throw new CircuitError("unknown-point", `no element touches the point ${point}`, [point]);
    return row;
  }

  /** Responses of all unknowns to the signal, and to 1 A into each of the rows given; [unknown][column], interleaved. */
  solve(hertz: number, rows: readonly number[]): Float64Array {
    const { circuit } = this;
    const { size, stamps, states, ports } = circuit;
    const omega = 2 * Math.PI * hertz;
    const matrix = new Float64Array(2 * size * size);
    const add = (row: number, column: number, re: number, im: number): void => {
      if (row < 0 || column < 0) return;
      const at = 2 * (row * size + column);
      matrix[at] = matrix[at]! + re;
      matrix[at + 1] = matrix[at + 1]! + im;
    };
    const couple = (a: { plus: number; minus: number }, b: { plus: number; minus: number }, re: number, im: number): void => {
      add(a.plus, b.plus, re, im);
      add(a.minus, b.minus, re, im);
      add(a.plus, b.minus, -re, -im);
      add(a.minus, b.plus, -re, -im);
    };
    for (const [k, value] of stamps.values.entries()) add(stamps.rows[k]!, stamps.columns[k]!, value, 0);
    for (const slot of states) couple(slot, slot, 0, omega * slot.coefficient);
    const choked = new Map(this.chokes.map((choke) => [choke.port, choke]));
    ports.forEach((port, k) => {
      couple(port, port, -port.lent, 0);
      const choke = choked.get(k);
      if (choke !== undefined) {
        const norm = choke.ohms ** 2 + (omega * choke.henries) ** 2;
        couple(port, port, choke.ohms / norm, (-omega * choke.henries) / norm);
        return;
      }
      ports.forEach((other, j) => {
        const slope = this.slopes[k * ports.length + j]!;
        if (slope !== 0) couple(port, other, slope, 0);
      });
    });
    const columns = 1 + rows.length;
    const right = new Float64Array(2 * size * columns);
    for (let row = 0; row < size; row++) right[2 * row * columns] = this.drive[row]!;
    rows.forEach((row, k) => {
      if (row >= 0) right[2 * (row * columns + 1 + k)] = 1;
    });
    const lost = solveComplex(size, matrix, right, columns);
    if (lost >= 0) throw new CircuitError("singular", `the linearised network does not determine the ${circuit.rowNames[lost]}`);
    return right;
  }
}

const RANGE = [0.1, 1e7] as const;
const POINTS_PER_DECADE = 12;

/** Frequency where a falling (or rising) gain passes a level, between two that enclose it; bisected on a log scale. */
function bisect(inside: number, outside: number, gainAt: (hertz: number) => number, level: number): number {
  let near = Math.log(inside);
  let far = Math.log(outside);
  for (let pass = 0; pass < 40; pass++) {
    const middle = (near + far) / 2;
    if (gainAt(Math.exp(middle)) >= level) near = middle;
    else far = middle;
  }
  return Math.exp((near + far) / 2);
}

function findCorners(gainAt: (hertz: number) => number, [low, high]: readonly [number, number]): SmallSignalResponse["corners"] {
  const count = Math.max(2, Math.ceil(Math.log10(high / low) * POINTS_PER_DECADE));
  const grid = Array.from({ length: count + 1 }, (_, k) => low * (high / low) ** (k / count));
  const gains = grid.map(gainAt);
  const top = gains.indexOf(Math.max(...gains));
  const level = gains[top]! * Math.SQRT1_2;
  const flat = gains.map((gain, k) => (gain >= 0.99 * gains[top]! ? grid[k]! : 0)).filter((hertz) => hertz > 0);
  const corners: SmallSignalResponse["corners"] = { midGain: gains[top]!, midHertz: Math.sqrt(flat[0]! * flat.at(-1)!) };
  let below = top;
  while (below >= 0 && gains[below]! >= level) below--;
  if (below >= 0) corners.lowHertz = bisect(grid[below + 1]!, grid[below]!, gainAt, level);
  let above = top;
  while (above < grid.length && gains[above]! >= level) above++;
  if (above < grid.length) corners.highHertz = bisect(grid[above - 1]!, grid[above]!, gainAt, level);
  return corners;
}

/**
 * Small-signal response of a network linearised at its operating point: gain, output impedance and corner frequencies.
 * Tubes have no capacitances here unless the network has them as capacitors.
 *
 * @returns one response for each output point
 * @throws CircuitError as `operatingPoint`, and `bad-value` for an input that is no source
 */
export function smallSignal(network: Network, options: SmallSignalOptions): ReadonlyMap<string, SmallSignalResponse> {
  const solution = options.operating ?? operatingPoint(network);
  if (!(solution instanceof SteadySolution)) throw new CircuitError("bad-value", "the operating state was not made by this engine");
  const linear = new LinearNetwork(solution, options.input);
  const rows = options.outputs.map((point) => linear.row(point));
  const responses = new Map<string, SmallSignalResponse>();
  const columns = 1 + rows.length;
  const at = (solved: Float64Array, row: number, column: number): Complex =>
    row < 0 ? { re: 0, im: 0 } : { re: solved[2 * (row * columns + column)]!, im: solved[2 * (row * columns + column) + 1]! };
  options.outputs.forEach((point, k) => {
    const single = (hertz: number): number => {
      const solved = linear.solve(hertz, []);
      return rows[k]! < 0 ? 0 : Math.hypot(solved[2 * rows[k]!]!, solved[2 * rows[k]! + 1]!);
    };
    responses.set(point, { gain: [], outputOhms: [], corners: findCorners(single, options.range ?? RANGE) });
  });
  for (const hertz of options.hertz) {
    const solved = linear.solve(hertz, rows);
    options.outputs.forEach((point, k) => {
      const response = responses.get(point)!;
      response.gain.push(at(solved, rows[k]!, 0));
      const impedance = at(solved, rows[k]!, 1 + k);
      response.outputOhms.push(Math.hypot(impedance.re, impedance.im));
    });
  }
  return responses;
}
