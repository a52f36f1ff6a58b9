import { Curve } from "./curve.ts";
import type { Hypotheses } from "./enumerate.ts";
import { editAt, type Family, faultAt, type Member } from "./family.ts";
import type { Fault } from "./fault.ts";
import type { FaultSolver } from "./faultSolver.ts";
import type { Ground } from "./ground.ts";
import { type Judged, judgedOf } from "./judged.ts";
import type { Fit, Likelihood } from "./likelihood.ts";
import { judgeRange } from "./ranges.ts";
import type { Screen } from "./screen.ts";

/** What the judging of hypotheses works with. */
export interface Bench {
  ground: Ground;
  solver: FaultSolver;
  screen: Screen;
  likelihood: Likelihood;
  /** The observables that were read. */
  wanted: ReadonlySet<number>;
  /** Called after each hypothesis; true when time is up. */
  tick(): boolean;
}

/** Share of what a fault changes that the linearised chassis may be wrong by: rectifiers and tubes are not straight. */
const SCREEN_LOOSE = 0.25;
/** Hypotheses that a first look leaves in play: within so much of the best, and no more than so many. */
const SCREEN_MARGIN = 14;
const SCREEN_MOST = 160;
/** A hypothesis that falls behind by so much on part of the readings is not followed further: two slips would not save it. */
const HOPELESS = 25;
/** A hypothesis explains the readings whose squared deviations lie within so many standard deviations of their number. */
const EXPLAINED = 1.3;
/** A range is simulated at length where it falls behind the best one by no more than this. */
const PROMISING = 8;
/** Long simulations at most. */
const FAR_MOST = 120;
/** Values in ohms that a bridge is simulated with where the first look says nothing of it. */
const BRIDGE_NODES = [0.1, 1e3, 1e4] as const;
/** Readings that change by less than this share of a deviation do not show the fault. */
const UNSEEN = 0.1;
/** Simulations that a range is traced with beyond the first ones, and how close in the logarithm two values are the same. */
const MOST_TRACES = 4;
const SAME_VALUE = 0.05;

/**
 * A look at every hypothesis: all that are matters of resistance on the linearised chassis, then those in play by simulation. What only a
 * long simulation would tell comes last, and only where nothing else explains the readings.
 */
export function judgeAll({ singles, families }: Hypotheses, bench: Bench): Verdicts {
  const judge = new Judge(bench);
  const looked: Looked[] = [];
  for (const single of singles) looked.push(judge.lookAtSingle(single.fault, single.prior));
  for (const family of families) looked.push(...judge.lookAtFamily(family));
  looked.sort((a, b) => (a.logWeight === b.logWeight ? b.prior - a.prior : b.logWeight - a.logWeight));
  const best = looked.find(({ logWeight }) => Number.isFinite(logWeight))?.logWeight ?? 0;
  const judged: Judged[] = [];
  let followed = 0;
  let late = false;
  const putOff: (() => Judged[])[] = [];
  for (const { logWeight, wiring, run, fallback } of looked) {
    const screened = Number.isFinite(logWeight);
    if (!screened && wiring) {
      putOff.push(run);
      continue;
    }
    if (late || (screened && (logWeight < best - SCREEN_MARGIN || followed >= SCREEN_MOST))) {
      judged.push(...fallback);
      continue;
    }
    if (screened) followed += 1;
    judged.push(...run());
    late = bench.tick();
  }
  const explained = () => judged.some(({ fit }) => explains(fit));
  if (!explained())
    for (const run of putOff.splice(0)) {
      if (late) break;
      judged.push(...run());
      late = bench.tick();
    }
  const far = judge.far.sort((a, b) => b.prior - a.prior).slice(0, FAR_MOST);
  for (const fault of explained() ? [] : far) {
    if (late) break;
    judged.push(...judge.march(fault));
    late = bench.tick();
  }
  return { judged, complete: !late, spared: putOff.length };
}

export interface Verdicts {
  judged: Judged[];
  /** False when time ran out. */
  complete: boolean;
  /** Leads and bridges at alternating points that were not looked at, since something else explains the readings. */
  spared: number;
}

/** Whether a hypothesis leaves no more unexplained than chance does, and nothing to a slip. */
const explains = ({ squares, deviations, slip }: Fit): boolean =>
  slip === undefined && squares < deviations.length + EXPLAINED * Math.sqrt(2 * deviations.length);

/** A first look: what it weighs, how to judge it by simulation, and what stands for it where that is not worth while. */
interface Looked {
  /** Infinity where only a simulation tells. */
  logWeight: number;
  prior: number;
  /** A lead or a bridge: there are very many. */
  wiring: boolean;
  run: () => Judged[];
  fallback: Judged[];
}

/** A fault that is simulated at length, and only where nothing else explains the readings. */
interface Late {
  fault: Fault;
  edit: Fault;
  prior: number;
}

class Judge {
  readonly #bench: Bench;
  /** Best log likelihood so far on each part of the readings. */
  readonly #best = new Map<number, number>();

  #top = Number.NEGATIVE_INFINITY;
  /** Faults that only a long simulation tells of. */
  readonly far: Late[] = [];

  constructor(bench: Bench) {
    this.#bench = bench;
  }

  march({ fault, edit, prior }: Late): Judged[] {
    const { solver, wanted, likelihood } = this.#bench;
    const predicted = solver.predict([edit], wanted, { hopeless: this.#hopeless });
    return predicted === undefined ? [] : [judgedOf(fault, edit, prior, predicted, likelihood.fit(predicted))];
  }

  #hopeless = (soFar: Float64Array): boolean => {
    const known = this.#bench.likelihood.indices.reduce((count, index) => count + (Number.isNaN(soFar[index]!) ? 0 : 1), 0);
    const { logLikelihood } = this.#bench.likelihood.fit(soFar);
    const best = Math.max(this.#best.get(known) ?? Number.NEGATIVE_INFINITY, logLikelihood);
    this.#best.set(known, best);
    return logLikelihood < best - HOPELESS;
  };

  /** @param asFault the suspect that is put off when the edit takes long */
  #simulate(edit: Fault, asFault?: { fault: Fault; prior: number }): Float64Array | undefined {
    const found = this.#bench.solver.near([edit], this.#bench.wanted, this.#hopeless);
    if (found !== "far") return found;
    if (asFault !== undefined) this.far.push({ ...asFault, edit });
    return undefined;
  }

  lookAtSingle(fault: Fault, prior: number): Looked {
    const { screen, likelihood } = this.#bench;
    const wiring = fault.kind === "moved-lead";
    const run = () => {
      const predicted = this.#simulate(fault, { fault, prior });
      return predicted === undefined ? [] : [judgedOf(fault, fault, prior, predicted, likelihood.fit(predicted))];
    };
    const predicted = screen.predict(fault);
    if (predicted === undefined) return { logWeight: Number.POSITIVE_INFINITY, prior, wiring, run, fallback: [] };
    const looked = judgedOf(fault, fault, prior, predicted, likelihood.fit(predicted, { loose: SCREEN_LOOSE }));
    return { logWeight: looked.logWeight, prior, wiring, run, fallback: [looked] };
  }

  lookAtFamily(family: Family): Looked[] {
    const { screen, ground, likelihood } = this.#bench;
    const rows = family.nodes.map((value) => screen.predict(editAt(family, value)));
    const prior = family.members.reduce((sum, member) => sum + member.prior, 0);
    const wiring = family.by === "bridge";
    const known = family.nodes.filter((_, k) => rows[k] !== undefined);
    if (known.length < 2 || known.length < family.nodes.length / 2)
      return [{ logWeight: Number.POSITIVE_INFINITY, prior, wiring, run: () => this.#simulateFamily(family), fallback: [] }];
    const curve = curveOf(
      family,
      known,
      rows.filter((row) => row !== undefined),
      ground,
    );
    return family.members.flatMap((member): Looked[] => {
      if (typeof member.at === "number") return [this.#lookAtMember(family, member, member.at)];
      const looked = judgeRange(family, member.kind, member.at, member.prior, curve, likelihood, SCREEN_LOOSE);
      return [
        { logWeight: looked.logWeight, prior: member.prior, wiring, run: () => this.#trace(family, member, looked), fallback: [looked] },
      ];
    });
  }

  /** A member with one value: a fault like any other. */
  #lookAtMember(family: Family, { kind, prior }: Member, value: number): Looked {
    const { screen, likelihood } = this.#bench;
    const [fault, edit] = [faultAt(family, kind, value), editAt(family, value)];
    const wiring = family.by === "bridge";
    const run = () => {
      const predicted = this.#simulate(edit, { fault, prior });
      return predicted === undefined ? [] : [judgedOf(fault, edit, prior, predicted, likelihood.fit(predicted))];
    };
    const predicted = screen.predict(edit);
    if (predicted === undefined) return { logWeight: Number.POSITIVE_INFINITY, prior, wiring, run, fallback: [] };
    const looked = judgedOf(fault, edit, prior, predicted, likelihood.fit(predicted, { loose: SCREEN_LOOSE }));
    return { logWeight: looked.logWeight, prior, wiring, run, fallback: [looked] };
  }

  /** Simulates a range where the first look finds it likeliest, and then where the simulated values do, until that is where it was simulated. */
  #trace(family: Family, member: Member, looked: Judged): Judged[] {
    const points = new Map<number, Float64Array>();
    const { nominal } = family.base;
    if (family.by === "value" && nominal !== undefined && nominal > 0 && Number.isFinite(nominal))
      points.set(nominal, this.#bench.ground.nominal);
    const first = looked.edit.value ?? 0;
    for (const value of points.size > 0 ? [first] : [first, ...neighbours(family, first)]) {
      const own = value === first ? { fault: looked.fault, prior: member.prior } : undefined;
      const predicted = this.#simulate(editAt(family, value), own);
      if (predicted !== undefined) points.set(value, predicted);
      else if (value === first) return [];
    }
    return this.#settle(family, [member], points, MOST_TRACES);
  }

  /** Judges members by a curve through simulated values, adding the value that is found likeliest until it is one of those. */
  #settle(family: Family, members: readonly Member[], points: Map<number, Float64Array>, most: number): Judged[] {
    const { likelihood } = this.#bench;
    for (let pass = 0; ; pass += 1) {
      const values = [...points.keys()].sort((a, b) => a - b);
      const curve = new Curve(
        values,
        values.map((value) => points.get(value)!),
      );
      const judged = members.flatMap((member) => judgeMember(family, member, curve, likelihood) ?? []);
      const best = judged.reduce<Judged | undefined>((a, b) => (a === undefined || b.logWeight > a.logWeight ? b : a), undefined);
      const value = best?.edit.value;
      if (value === undefined || pass >= most || values.some((known) => Math.abs(Math.log(value / known)) < SAME_VALUE || value === known))
        return judged;
      const predicted = this.#simulate(editAt(family, value)) ?? this.#atLength(editAt(family, value), best?.logWeight ?? 0);
      if (predicted === undefined) return judged;
      points.set(value, predicted);
    }
  }

  /** A long simulation, for what nearly explains the readings. */
  #atLength(edit: Fault, logWeight: number): Float64Array | undefined {
    const { solver, wanted } = this.#bench;
    this.#top = Math.max(this.#top, logWeight);
    return logWeight > this.#top - PROMISING ? solver.predict([edit], wanted) : undefined;
  }

  /** Faults that are no matter of resistance: simulated from end to end, unless neither end shows. */
  #simulateFamily(family: Family): Judged[] {
    const { ground, likelihood } = this.#bench;
    const nodes = family.by === "bridge" ? BRIDGE_NODES : family.nodes;
    const [low, high] = [nodes[0]!, nodes.at(-1)!];
    const points = new Map<number, Float64Array>();
    const { nominal } = family.base;
    if (family.by === "value" && nominal !== undefined && nominal > low && nominal < high) points.set(nominal, ground.nominal);
    const add = (value: number) => {
      const row = this.#simulate(editAt(family, value));
      if (row !== undefined) points.set(value, row);
      return row;
    };
    const ends = [add(low), add(high)];
    const shows = (row: Float64Array | undefined) =>
      row === undefined ||
      likelihood.indices.some((index, k) => Math.abs(row[index]! - ground.nominal[index]!) > UNSEEN * likelihood.deviation(k));
    const visible = ends.some(shows);
    if (visible) for (const value of nodes.slice(1, -1)) add(value);
    const judged = points.size === 0 ? [] : this.#settle(family, family.members, points, visible ? MOST_TRACES : 0);
    // Members whose value the curve does not reach are put off.
    if (points.size === 0) this.far.push(...family.members.flatMap((member) => samplesOf(family, member)));
    return judged;
  }
}

/** What stands for a member in a long simulation: its value, or three of its range. */
function samplesOf(family: Family, { kind, at, prior }: Member): Late[] {
  const values = typeof at === "number" ? [at] : [1 / 6, 1 / 2, 5 / 6].map((share) => at[0] * (at[1] / at[0]) ** share);
  return values.map((value) => ({ fault: faultAt(family, kind, value), edit: editAt(family, value), prior: prior / values.length }));
}

/** The values of a family's nodes on both sides of one, ends that stand for a short and an open part left out. */
function neighbours({ nodes }: Family, value: number): number[] {
  const finite = nodes.filter((node) => node > 0 && Number.isFinite(node));
  const above = finite.find((node) => node > 1.1 * value);
  const below = finite.findLast((node) => node < 0.9 * value);
  return [below, above].filter((node) => node !== undefined);
}

/** Readings against the family's value, the part as it should be among them. */
function curveOf(family: Family, nodes: readonly number[], rows: readonly Float64Array[], ground: Ground): Curve {
  const { nominal } = family.base;
  const at = nominal === undefined || family.by !== "value" ? -1 : nodes.findIndex((value) => value > nominal);
  if (at <= 0) return new Curve(nodes, rows);
  return new Curve([...nodes.slice(0, at), nominal!, ...nodes.slice(at)], [...rows.slice(0, at), ground.nominal, ...rows.slice(at)]);
}

function judgeMember(family: Family, { kind, at, prior }: Member, curve: Curve, likelihood: Likelihood): Judged | undefined {
  if (typeof at !== "number") return judgeRange(family, kind, at, prior, curve, likelihood, 0);
  if (!curve.covers(at)) return undefined;
  const predicted = curve.at(at);
  return judgedOf(faultAt(family, kind, at), editAt(family, at), prior, predicted, likelihood.fit(predicted));
}
