import type { Circuit } from "./circuit.ts";
import type { Pair } from "./network.ts";
import type { Waves } from "./waves.ts";

/** Figures of one element over the whole time followed. */
export interface TransientFigures {
  maxAmps: number;
  minAmps: number;
  maxVolts: number;
  minVolts: number;
  /** Integral of the squared current in ampere-squared seconds, as a fuse sees it. */
  i2t: number;
  /** Integral of voltage times current in joules: taken up (for a capacitor or coil also what it stores). */
  joules: number;
}

/** What a transient leaves. */
export interface TransientResult {
  /** Ends of the steps in seconds, from the instant of switching on. */
  times: Float64Array;
  /** Waveforms of points against the reference, in volts. */
  volts: ReadonlyMap<string, Float64Array>;
  /** Waveforms of elements and windings, in amperes. */
  amps: ReadonlyMap<string, Float64Array>;
  elements: ReadonlyMap<string, TransientFigures>;
  /** Temperature of each thermistor in kelvins. */
  kelvin: ReadonlyMap<string, Float64Array>;
}

/** Every current-carrying branch of a circuit: element or winding, with the points its voltage is taken between. */
function branchesOf(circuit: Circuit): [id: string, pair: Pair][] {
  return [...circuit.elements.values()].flatMap((element): [string, Pair][] => {
    if (element.kind === "transformer") return element.windings.map((winding) => [`${element.id}.${winding.id}`, winding.nodes]);
    if (element.kind === "triode" || element.kind === "pentode") return [[element.id, [element.nodes.plate, element.nodes.cathode]]];
    return [[element.id, element.nodes]];
  });
}

/** Gathers waveforms and figures block by block, so that a long run does not keep every unknown of every stage. */
export class TransientRecorder {
  private readonly times: Float64Array;
  private readonly volts = new Map<string, Float64Array>();
  private readonly amps = new Map<string, Float64Array>();
  private readonly kelvin = new Map<string, Float64Array>();
  private readonly elements = new Map<string, TransientFigures>();
  private readonly branches: [id: string, pair: Pair][];

  private readonly startSeconds: number;
  private filled = 0;

  /** @param startSeconds time of the sources at the instant of switching on */
  constructor(
    circuit: Circuit,
    steps: number,
    startSeconds: number,
    record: { points?: readonly string[]; elements?: readonly string[] } | undefined,
  ) {
    this.times = new Float64Array(steps);
    this.startSeconds = startSeconds;
    this.branches = branchesOf(circuit);
    for (const point of record?.points ?? circuit.pointRows.keys()) this.volts.set(point, new Float64Array(steps));
    for (const id of record?.elements ?? this.branches.map(([name]) => name)) this.amps.set(id, new Float64Array(steps));
    for (const [id] of this.branches) {
      const none = { maxAmps: Number.NEGATIVE_INFINITY, minAmps: Number.POSITIVE_INFINITY };
      this.elements.set(id, { ...none, maxVolts: Number.NEGATIVE_INFINITY, minVolts: Number.POSITIVE_INFINITY, i2t: 0, joules: 0 });
    }
    for (const element of circuit.elements.values())
      if (element.kind === "thermistor") this.kelvin.set(element.id, new Float64Array(steps));
  }

  /** Takes in a block of steps that spans `span` seconds; `kelvin` are the temperatures it ran with. */
  add(waves: Waves, span: number, kelvin: ReadonlyMap<string, number>): void {
    const { stages, weights, times } = waves.trajectory;
    const count = stages / 2;
    const firstStep = this.filled;
    this.filled += count;
    for (let k = 0; k < count; k++) this.times[firstStep + k] = times[2 * k + 1]! - this.startSeconds;
    const ends = (from: Float64Array, into: Float64Array): void => {
      for (let k = 0; k < count; k++) into[firstStep + k] = from[2 * k + 1]!;
    };
    for (const [point, into] of this.volts) ends(waves.row(waves.pointRow(point)), into);
    for (const [id, into] of this.amps) ends(waves.amps(id), into);
    for (const [id, into] of this.kelvin) into.fill(kelvin.get(id)!, firstStep, firstStep + count);
    for (const [id, pair] of this.branches) {
      const figures = this.elements.get(id)!;
      const amps = waves.amps(id);
      const volts = waves.between(pair[0], pair[1]);
      for (let stage = 0; stage < stages; stage++) {
        const i = amps[stage]!;
        const v = volts[stage]!;
        figures.i2t += weights[stage]! * span * i * i;
        figures.joules += weights[stage]! * span * v * i;
        if (stage % 2 === 0) continue;
        if (i > figures.maxAmps) figures.maxAmps = i;
        if (i < figures.minAmps) figures.minAmps = i;
        if (v > figures.maxVolts) figures.maxVolts = v;
        if (v < figures.minVolts) figures.minVolts = v;
      }
    }
  }

  result(): TransientResult {
    return { times: this.times, volts: this.volts, amps: this.amps, elements: this.elements, kelvin: this.kelvin };
  }
}
