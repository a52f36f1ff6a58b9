import { Curve } from "./curve.ts";
import type { Hypotheses } from "./enumerate.ts";
import { editAt, type Family, faultAt, type Member } from "./family.ts";
import type { Fault } from "./fault.ts";
import type { FaultSolver } from "./faultSolver.ts";
import type { Ground } from "./ground.ts";
import { type Fit, type Likelihood, logSum } from "./likelihood.ts";
import type { Screen } from "./screen.ts";

/** A fault with what the readings say of it. */
export interface Judged {
  fault: Fault;
  /** What goes into the network; differs from the fault where a family puts its value in by an edit of its own. */
  edit: Fault;
  prior: number;
  /** ln of prior times likelihood, a range's value integrated out; not yet normalised. */
  logWeight: number;
  fit: Fit;
  /** Scaled readings, by observable; NaN where not simulated yet. */
  predicted: Float64Array;
  /** Values that hold most of the weight of a range. */
  low?: number;
  high?: number;
  /** A drifted part beside it. */
  second?: Fault;
}

/** Values of a range at which its likelihood is looked at. */
const QUADRATURE = 24;

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
/** Readings that change by less than this share of a deviation do not show the fault. */
const UNSEEN = 0.1;

/** A look at every hypothesis: all that are matters of resistance on the linearised chassis, then those in play by simulation. */
export function judgeAll({ singles, families }: Hypotheses, bench: Bench): { judged: Judged[]; complete: boolean } {
  const judge = new Judge(bench);
  const looked: { logWeight: number; run: () => Judged[]; fallback: Judged[] }[] = [];
  for (const single of singles) looked.push(judge.lookAtSingle(single.fault, single.prior));
  for (const family of families) looked.push(...judge.lookAtFamily(family));
  looked.sort((a, b) => b.logWeight - a.logWeight);
  const best = looked.find(({ logWeight }) => Number.isFinite(logWeight))?.logWeight ?? 0;
  const judged: Judged[] = [];
  let followed = 0;
  let late = false;
  for (const { logWeight, run, fallback } of looked) {
    const screened = Number.isFinite(logWeight);
    if (late || (screened && (logWeight < best - SCREEN_MARGIN || followed >= SCREEN_MOST))) {
      judged.push(...fallback);
      continue;
    }
    if (screened) followed += 1;
    judged.push(...run());
    late = bench.tick();
  }
  return { judged, complete: !late };
}

class Judge {
  readonly #bench: Bench;
  /** Best log likelihood so far on each part of the readings. */
  readonly #best = new Map<number, number>();

  constructor(bench: Bench) {
    this.#bench = bench;
  }

  #hopeless = (soFar: Float64Array): boolean => {
    const known = this.#bench.likelihood.indices.reduce((count, index) => count + (Number.isNaN(soFar[index]!) ? 0 : 1), 0);
    const { logLikelihood } = this.#bench.likelihood.fit(soFar);
    const best = Math.max(this.#best.get(known) ?? Number.NEGATIVE_INFINITY, logLikelihood);
    this.#best.set(known, best);
    return logLikelihood < best - HOPELESS;
  };

  #simulate(fault: Fault): Float64Array | undefined {
    return this.#bench.solver.predict([fault], this.#bench.wanted, { hopeless: this.#hopeless });
  }

  lookAtSingle(fault: Fault, prior: number): { logWeight: number; run: () => Judged[]; fallback: Judged[] } {
    const { screen, likelihood } = this.#bench;
    const run = () => {
      const predicted = this.#simulate(fault);
      return predicted === undefined ? [] : [judgedOf(fault, fault, prior, predicted, likelihood.fit(predicted))];
    };
    const predicted = screen.predict(fault);
    if (predicted === undefined) return { logWeight: Number.POSITIVE_INFINITY, run, fallback: [] };
    const fit = likelihood.fit(predicted, { loose: SCREEN_LOOSE });
    const looked = judgedOf(fault, fault, prior, predicted, fit);
    return { logWeight: looked.logWeight, run, fallback: [looked] };
  }

  lookAtFamily(family: Family): { logWeight: number; run: () => Judged[]; fallback: Judged[] }[] {
    const rows = family.nodes.map((value) => this.#bench.screen.predict(editAt(family, value)));
    if (rows.some((row) => row === undefined))
      return [{ logWeight: Number.POSITIVE_INFINITY, run: () => this.#simulateFamily(family), fallback: [] }];
    const curve = curveOf(family, family.nodes, rows as Float64Array[], this.#bench.ground);
    return family.members.flatMap((member) => {
      const looked = judgeMember(family, member, curve, this.#bench.likelihood, SCREEN_LOOSE);
      if (looked === undefined) return [];
      return [{ logWeight: looked.logWeight, run: () => this.#anchor(family, member, curve, looked), fallback: [looked] }];
    });
  }

  /** Simulates a member at its likeliest value, and moves the linearised curve there; once more where that changes the value. */
  #anchor(family: Family, member: Member, curve: Curve, looked: Judged): Judged[] {
    let value = looked.edit.value ?? 0;
    let last: Judged | undefined;
    for (let pass = 0; pass < 3; pass += 1) {
      const simulated = this.#simulate(editAt(family, value));
      if (simulated === undefined) return last === undefined ? [] : [last];
      const moved = curve.through(value, simulated, this.#bench.ground.nominal);
      last = judgeMember(family, member, moved, this.#bench.likelihood, 0);
      const next = last?.edit.value ?? value;
      if (last === undefined || typeof member.at === "number" || Math.abs(Math.log(next / value)) < 0.04) break;
      value = next;
    }
    return last === undefined ? [] : [last];
  }

  /** Faults that are no matter of resistance: simulated from end to end, unless neither end shows. */
  #simulateFamily(family: Family): Judged[] {
    const { ground, likelihood } = this.#bench;
    const ends = [family.nodes[0]!, family.nodes.at(-1)!].map((value) =>
      this.#bench.solver.predict([editAt(family, value)], this.#bench.wanted),
    );
    const shows = (row: Float64Array | undefined) =>
      row === undefined ||
      likelihood.indices.some((index, k) => Math.abs(row[index]! - ground.nominal[index]!) > UNSEEN * likelihood.deviation(k));
    if (!ends.some(shows)) {
      const unseen = curveOf(family, [family.nodes[0]!, family.nodes.at(-1)!], ends as Float64Array[], ground);
      return family.members.flatMap((member) => judgeMember(family, member, unseen, likelihood, 0) ?? []);
    }
    const values: number[] = [];
    const rows: Float64Array[] = [];
    for (const [k, value] of family.nodes.entries()) {
      const row =
        k === 0
          ? ends[0]
          : k === family.nodes.length - 1
            ? ends[1]
            : this.#bench.solver.predict([editAt(family, value)], this.#bench.wanted);
      if (row === undefined) continue;
      values.push(value);
      rows.push(row);
    }
    if (rows.length === 0) return [];
    const curve = curveOf(family, values, rows, ground);
    return family.members.flatMap((member) => judgeMember(family, member, curve, likelihood, 0) ?? []);
  }
}

function judgedOf(fault: Fault, edit: Fault, prior: number, predicted: Float64Array, fit: Fit): Judged {
  return { fault, edit, prior, logWeight: Math.log(prior) + fit.logLikelihood, fit, predicted };
}

/** Readings against the family's value, the part as it should be among them. */
function curveOf(family: Family, nodes: readonly number[], rows: readonly Float64Array[], ground: Ground): Curve {
  const { nominal } = family.base;
  const at = nominal === undefined || family.by !== "value" ? -1 : nodes.findIndex((value) => value > nominal);
  if (at <= 0) return new Curve(nodes, rows);
  return new Curve([...nodes.slice(0, at), nominal!, ...nodes.slice(at)], [...rows.slice(0, at), ground.nominal, ...rows.slice(at)]);
}

function judgeMember(family: Family, { kind, at, prior }: Member, curve: Curve, likelihood: Likelihood, loose: number): Judged | undefined {
  if (typeof at !== "number") return judgeRange(family, kind, at, prior, curve, likelihood, loose);
  if (!curve.covers(at)) return undefined;
  const predicted = curve.at(at);
  return judgedOf(faultAt(family, kind, at), editAt(family, at), prior, predicted, likelihood.fit(predicted, { loose }));
}

function judgeRange(
  family: Family,
  kind: Fault["kind"],
  [low, high]: readonly [number, number],
  prior: number,
  curve: Curve,
  likelihood: Likelihood,
  loose: number,
): Judged {
  const at = (k: number) => low * (high / low) ** ((k + 0.5) / QUADRATURE);
  const points = Array.from({ length: QUADRATURE }, (_, k) => {
    const predicted = curve.at(at(k));
    return { value: at(k), predicted, fit: likelihood.fit(predicted, { loose }) };
  });
  const total = logSum(points.map(({ fit }) => fit.logLikelihood));
  let best = points.reduce((a, b) => (b.fit.logLikelihood > a.fit.logLikelihood ? b : a));
  best = refine(best, curve, likelihood, loose, (high / low) ** (1 / QUADRATURE));
  const kept = points.filter(({ fit }) => fit.logLikelihood > best.fit.logLikelihood - 2).map(({ value }) => value);
  return {
    fault: faultAt(family, kind, best.value),
    edit: editAt(family, best.value),
    prior,
    logWeight: Math.log(prior) + total - Math.log(QUADRATURE),
    fit: best.fit,
    predicted: best.predicted,
    low: Math.min(best.value, ...kept),
    high: Math.max(best.value, ...kept),
  };
}

interface Point {
  value: number;
  predicted: Float64Array;
  fit: Fit;
}

/** Golden section on the logarithm of the value, within one step of the best of the grid. */
function refine(best: Point, curve: Curve, likelihood: Likelihood, loose: number, step: number): Point {
  let [low, high] = [best.value / step, best.value * step];
  let top = best;
  for (let k = 0; k < 12; k += 1) {
    const [a, b] = [low * (high / low) ** 0.382, low * (high / low) ** 0.618];
    const [at, other] = [a, b].map((value) => {
      const predicted = curve.at(value);
      return { value, predicted, fit: likelihood.fit(predicted, { loose }) };
    }) as [Point, Point];
    const better = at.fit.logLikelihood > other.fit.logLikelihood ? at : other;
    if (better === at) high = b;
    else low = a;
    if (better.fit.logLikelihood > top.fit.logLikelihood) top = better;
  }
  return top;
}
