import { CircuitError } from "@underchassis/calc";
import type { ChassisModel, Life, Reading } from "../model/index.ts";
import { applyFault } from "./applyFault.ts";
import { candidateMeasurements } from "./candidates.ts";
import { judgeDoubles, type Relaid } from "./doubles.ts";
import { enumerateFaults } from "./enumerate.ts";
import type { Fault } from "./fault.ts";
import { FaultSolver } from "./faultSolver.ts";
import { type Ground, lay } from "./ground.ts";
import { groupsOf } from "./groups.ts";
import { judgeAll } from "./hypotheses.ts";
import type { Judged } from "./judged.ts";
import { Likelihood, logSum } from "./likelihood.ts";
import { type Observable, observableOf } from "./observable.ts";
import { priorsOf } from "./priors.ts";
import { retraced } from "./ranges.ts";
import { type Belief, reportOf } from "./report.ts";
import { spreadRipple } from "./rippleSpread.ts";
import { Screen } from "./screen.ts";
import type { SuspectReport } from "./suspectReport.ts";

export interface SearchOptions {
  /** Instead of the job's own readings. */
  readings?: readonly Reading[];
  /** Most suspects in the report; default 5. */
  top?: number;
  timeLimitSeconds?: number;
  onProgress?(done: number, total: number): void;
  /** Odds of one's own instead of the dataset's, by a name of `ODDS_NAMES`. */
  odds?: ReadonlyMap<string, number>;
}

/** Belief in the healthy chassis, and in something that the search does not know, before any reading. common-practice, rough. */
const HEALTHY = 0.5;
const UNKNOWN = 0.02;
/** Hypotheses that are looked at again with more steps: so many at most, and none whose weight is below this beside the best. */
const FINALISTS = 40;
const FINAL_MARGIN = 10;
/** So many get slopes of their own by the first look, and so many of the finalists by simulation where that says nothing. */
const LEADING = 60;
const RELAID = 4;
/** The value of so many is estimated anew with many steps. */
const RETRACED = 12;
/** A healthy chassis needs no search whose readings all lie within so many deviations, and together within their number of squared ones. */
const QUIET = 1.5;
/** A reading further off than this is not explained by one fault. */
const UNEXPLAINED = 3.3;

/**
 * From readings that are off to the fault that explains them: simulates every single fault, weighs each by the readings under the
 * covariance of tolerances and meters, groups what cannot be told apart, and says what to measure next.
 *
 * @returns suspects ranked by posterior; `nothing-off` when the healthy chassis explains the readings best
 * @throws nothing: a chassis that cannot be simulated gives `no-readings`
 */
export function searchSuspects(model: ChassisModel, options: SearchOptions = {}): SuspectReport {
  const start = performance.now();
  const life = lifeOf(options.readings ?? model.readings);
  const readings = (options.readings ?? model.readings).filter((reading) => reading.life === life);
  const clock = { start, limit: (options.timeLimitSeconds ?? Number.POSITIVE_INFINITY) * 1000 };
  try {
    return search(model, life, readings, options, clock);
  } catch (error) {
    if (!(error instanceof CircuitError)) throw error;
    return { ...EMPTY, life, seconds: (performance.now() - start) / 1000 };
  }
}

const EMPTY: Omit<SuspectReport, "life" | "seconds"> = {
  verdict: "no-readings",
  healthy: 1,
  noneOfThese: 0,
  suspects: [],
  unexplained: [],
  hypotheses: 0,
  spared: 0,
  simulations: 0,
  complete: true,
};

/** The chassis as it was last read. */
function lifeOf(readings: readonly Reading[]): "found" | "restored" {
  return readings.some(({ life }) => life === "restored") ? "restored" : "found";
}

function search(
  model: ChassisModel,
  life: "found" | "restored",
  readings: readonly Reading[],
  options: SearchOptions,
  clock: { start: number; limit: number },
): SuspectReport {
  const observables: Observable[] = [...readings.map(observableOf), ...candidateMeasurements(model, life, readings)];
  const read = new Set(readings.keys());
  const ground = lay(model, life, observables, { wanted: read });
  const usable = readings.flatMap(({ value }, index) =>
    Number.isNaN(ground.nominal[index]!) || Number.isNaN(value) ? [] : [{ index, value }],
  );
  const seconds = () => (performance.now() - clock.start) / 1000;
  if (usable.length === 0) return { ...EMPTY, life, seconds: seconds() };
  spreadRipple(ground, model.line.hertz, read);
  const likelihood = new Likelihood(ground, usable);
  const healthy = likelihood.fit(ground.nominal);
  if (healthy.deviations.every((deviation) => Math.abs(deviation) < QUIET) && healthy.squares <= usable.length)
    return { ...EMPTY, verdict: "nothing-off", life, seconds: seconds() };

  const solver = new FaultSolver(ground, model.line.hertz);
  const wanted = new Set(usable.map(({ index }) => index));
  const priors = priorsOf(model, options.odds);
  const faults = enumerateFaults(model, life, fullestFirst(ground), priors);
  const total = faults.singles.length + faults.families.length;
  let done = 0;
  const tick = () => {
    done += 1;
    options.onProgress?.(done, total);
    return performance.now() - clock.start > 0.8 * clock.limit;
  };
  const late = () => performance.now() - clock.start > clock.limit;
  const screen = new Screen(ground);
  const { judged, complete, spared } = judgeAll(faults, { ground, solver, screen, likelihood, wanted, tick });
  const members = faults.families.flatMap((family) => family.members);
  const odds = [...faults.singles, ...members].reduce((sum, { prior }) => sum + prior, 0);
  const scale = Math.log((1 - HEALTHY - UNKNOWN) / odds);
  const ranked = judged.map((entry) => ({ ...entry, logWeight: entry.logWeight + scale }));
  // What could be read next is worked out for those alone that are still in play.
  const whole = lay(model, life, observables);
  const closer = new FaultSolver(whole, model.line.hertz);
  const { finalists, relaid, rest } = again(ranked, { model, life, ground, whole, screen, solver: closer, likelihood, wanted, late });
  // One fault is the rule; two are looked for where the best one leaves a reading unexplained.
  const leaves = Math.max(0, ...(finalists[0]?.fit.deviations ?? []).map(Math.abs));
  const doubles = leaves < UNEXPLAINED || late() ? [] : judgeDoubles(relaid, ground, closer, likelihood, wanted);
  const healthyWeight = Math.log(HEALTHY) + healthy.logLikelihood;
  const unknownWeight = Math.log(UNKNOWN) + likelihood.unexplained;
  const sum = logSum([
    healthyWeight,
    unknownWeight,
    ...finalists.map(({ logWeight }) => logWeight),
    ...doubles.map(({ logWeight }) => logWeight),
    ...rest.map(({ logWeight }) => logWeight),
  ]);
  const beliefs: Belief[] = [...finalists, ...doubles]
    .map((entry) => ({ judged: entry, posterior: Math.exp(entry.logWeight - sum) }))
    .sort((a, b) => b.posterior - a.posterior);
  return reportOf(model, {
    life,
    readings,
    usable,
    ground: whole,
    healthy: { fit: healthy, posterior: Math.exp(healthyWeight - sum) },
    noneOfThese: Math.exp(unknownWeight - sum),
    groups: groupsOf(beliefs, whole),
    priorScale: Math.exp(scale),
    top: options.top ?? 5,
    hypotheses: faults.singles.length + members.length,
    spared,
    simulations: solver.solved + closer.solved,
    complete,
    seconds: seconds(),
  });
}

/** The networks, the one with most elements first. */
function fullestFirst(ground: Ground) {
  return [...ground.situations].sort((a, b) => b.network.elements.length - a.network.elements.length).map(({ compiled }) => compiled);
}

/** Everything that a second look needs. */
interface Second {
  model: ChassisModel;
  life: Life;
  /** What was read, and all that could be read. */
  ground: Ground;
  whole: Ground;
  screen: Screen;
  solver: FaultSolver;
  likelihood: Likelihood;
  wanted: ReadonlySet<number>;
  late(): boolean;
}

/**
 * A second look at the leaders: first with slopes of their own, then with more steps and at everything that could be read next.
 */
function again(ranked: readonly Judged[], second: Second): { finalists: Judged[]; relaid: Relaid[]; rest: Judged[] } {
  const { whole, screen, solver, likelihood, late } = second;
  // A fault may cut what ties two readings in the sound chassis, so that those count as well which fit each reading by itself.
  const alone = new Map(ranked.map((entry) => [entry, entry.logWeight - entry.fit.logLikelihood + likelihood.alone(entry.predicted)]));
  const byEither = [...ranked].sort((a, b) => Math.max(b.logWeight, alone.get(b)!) - Math.max(a.logWeight, alone.get(a)!));
  const leading = byEither.slice(0, LEADING).map((entry): Relaid => {
    const slopes = late() ? undefined : screen.slopes(entry.edit, entry.predicted);
    return slopes === undefined ? { judged: entry } : refitted(entry, entry.predicted, slopes, likelihood);
  });
  const byWeight = (a: Relaid, b: Relaid) => b.judged.logWeight - a.judged.logWeight;
  leading.sort(byWeight);
  const best = leading[0]?.judged.logWeight ?? 0;
  const all = new Set(whole.observables.keys());
  const refined = leading.slice(0, FINALISTS).filter(({ judged }) => judged.logWeight > best - FINAL_MARGIN);
  const predict = (edit: Fault) => solver.predict([edit], all, { effort: "fine" });
  const relaid = refined.map(({ judged, slopes }, rank): Relaid => {
    const options = slopes === undefined ? {} : { slopes };
    const mended = rank < RETRACED && !late() ? retraced(judged, predict, likelihood, options) : undefined;
    if (mended !== undefined) return { judged: mended, ...options };
    const predicted = late() ? undefined : predict(judged.edit);
    return predicted === undefined ? { judged, ...options } : refitted(judged, predicted, slopes, likelihood);
  });
  relaid.sort(byWeight);
  for (const [rank, { judged }] of relaid.slice(0, RELAID).entries()) {
    if (screen.predict(judged.edit) !== undefined || late()) continue;
    const slopes = slopesAt(judged, second);
    if (slopes !== undefined) relaid[rank] = refitted(judged, judged.predicted, slopes, likelihood);
  }
  relaid.sort(byWeight);
  const kept = new Set(refined.map(({ judged }) => `${JSON.stringify(judged.fault)}`));
  const rest = [...leading.map(({ judged }) => judged), ...byEither.slice(LEADING)].filter(({ fault }) => !kept.has(JSON.stringify(fault)));
  return { finalists: relaid.map(({ judged }) => judged), relaid: relaid.slice(0, RELAID), rest };
}

/** Slopes by simulation, where rectifiers or the transformer are at fault. */
function slopesAt({ edit }: Judged, { model, life, ground, wanted }: Second): Float64Array | undefined {
  try {
    return lay(model, life, ground.observables, { fault: (network) => applyFault(network, edit), wanted }).slopes;
  } catch (error) {
    if (error instanceof CircuitError) return undefined;
    throw error;
  }
}

function refitted(judged: Judged, predicted: Float64Array, slopes: Float64Array | undefined, likelihood: Likelihood): Relaid {
  const fit = likelihood.fit(predicted, slopes === undefined ? {} : { slopes });
  const logWeight = judged.logWeight + fit.logLikelihood - judged.fit.logLikelihood;
  return { judged: { ...judged, predicted, fit, logWeight }, ...(slopes === undefined ? {} : { slopes }) };
}
