import { CircuitError } from "@underchassis/calc";
import type { ChassisModel, Life, Reading } from "../model/index.ts";
import { applyFault } from "./applyFault.ts";
import { candidateMeasurements } from "./candidates.ts";
import { judgeDoubles, type Relaid } from "./doubles.ts";
import { enumerateFaults } from "./enumerate.ts";
import { FaultSolver } from "./faultSolver.ts";
import { type Ground, lay } from "./ground.ts";
import { groupsOf } from "./groups.ts";
import { type Judged, judgeAll } from "./hypotheses.ts";
import { Likelihood, logSum } from "./likelihood.ts";
import { type Observable, observableOf } from "./observable.ts";
import { type Priors, priorsOf } from "./priors.ts";
import { type Belief, reportOf } from "./report.ts";
import { Screen } from "./screen.ts";
import type { SuspectReport } from "./suspectReport.ts";

export interface SearchOptions {
  /** Instead of the job's own readings. */
  readings?: readonly Reading[];
  /** Most suspects in the report; default 5. */
  top?: number;
  timeLimitSeconds?: number;
  onProgress?(done: number, total: number): void;
  /** Odds of one's own instead of the dataset's. */
  priors?: Priors;
}

/** Belief in the healthy chassis, and in something that the search does not know, before any reading. common-practice, rough. */
const HEALTHY = 0.5;
const UNKNOWN = 0.02;
/** Hypotheses that are looked at again with more steps: so many at most, and none whose weight is below this beside the best. */
const FINALISTS = 40;
const FINAL_MARGIN = 10;
/** Of these, so many get slopes of their own. */
const RELAID = 6;
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
  const likelihood = new Likelihood(ground, usable);
  const healthy = likelihood.fit(ground.nominal);
  if (healthy.deviations.every((deviation) => Math.abs(deviation) < QUIET) && healthy.squares <= usable.length)
    return { ...EMPTY, verdict: "nothing-off", life, seconds: seconds() };

  const solver = new FaultSolver(ground, model.line.hertz);
  const wanted = new Set(usable.map(({ index }) => index));
  const priors = options.priors ?? priorsOf(model);
  const faults = enumerateFaults(model, life, fullestFirst(ground), priors);
  const total = faults.singles.length + faults.families.length;
  let done = 0;
  const tick = () => {
    done += 1;
    options.onProgress?.(done, total);
    return performance.now() - clock.start > 0.8 * clock.limit;
  };
  const late = () => performance.now() - clock.start > clock.limit;
  const { judged, complete } = judgeAll(faults, {
    ground,
    solver,
    screen: new Screen(ground),
    likelihood,
    wanted,
    tick,
  });
  const scale = Math.log((1 - HEALTHY - UNKNOWN) / judged.reduce((sum, { prior }) => sum + prior, 0));
  const ranked = judged.map((entry) => ({ ...entry, logWeight: entry.logWeight + scale })).sort((a, b) => b.logWeight - a.logWeight);
  // What could be read next is worked out for those alone that are still in play.
  const whole = lay(model, life, observables);
  const closer = new FaultSolver(whole, model.line.hertz);
  const { finalists, relaid } = again(model, life, ranked, whole, closer, likelihood, wanted, clock);
  const rest = ranked.slice(finalists.length);
  // One fault is the rule; two are looked for where the best one leaves a reading unexplained.
  const leaves = Math.max(0, ...(finalists[0]?.fit.deviations ?? []).map(Math.abs));
  const doubles = leaves < UNEXPLAINED || late() ? [] : judgeDoubles(relaid, whole, closer, likelihood, wanted);
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
    hypotheses: judged.length,
    simulations: solver.solved + closer.solved,
    complete,
    seconds: seconds(),
  });
}

/** The networks, the one with most elements first. */
function fullestFirst(ground: Ground) {
  return [...ground.situations].sort((a, b) => b.network.elements.length - a.network.elements.length).map(({ compiled }) => compiled);
}

/** A second look, with more steps and at everything that could be read next; the leaders with slopes of their own. */
function again(
  model: ChassisModel,
  life: Life,
  ranked: readonly Judged[],
  ground: Ground,
  solver: FaultSolver,
  likelihood: Likelihood,
  read: ReadonlySet<number>,
  clock: { start: number; limit: number },
): { finalists: Judged[]; relaid: Relaid[] } {
  const best = ranked[0]?.logWeight ?? 0;
  const all = new Set(ground.observables.map((_, index) => index));
  const chosen = ranked.slice(0, FINALISTS).filter(({ logWeight }) => logWeight > best - FINAL_MARGIN);
  const refined = chosen.map((entry) => {
    if (performance.now() - clock.start > clock.limit) return entry;
    const predicted = solver.predict([entry.edit], all, { effort: "fine" });
    if (predicted === undefined) return entry;
    const fit = likelihood.fit(predicted);
    return { ...entry, predicted, fit, logWeight: entry.logWeight + fit.logLikelihood - entry.fit.logLikelihood };
  });
  refined.sort((a, b) => b.logWeight - a.logWeight);
  const relaid: Relaid[] = [];
  const finalists = refined.map((entry, rank) => {
    if (rank >= RELAID || performance.now() - clock.start > clock.limit) return entry;
    try {
      const { slopes } = lay(model, life, ground.observables, { fault: (network) => applyFault(network, entry.edit), wanted: read });
      const fit = likelihood.fit(entry.predicted, { slopes });
      const judged = { ...entry, fit, logWeight: entry.logWeight + fit.logLikelihood - entry.fit.logLikelihood };
      relaid.push({ judged, slopes });
      return judged;
    } catch (error) {
      if (error instanceof CircuitError) return entry;
      throw error;
    }
  });
  finalists.sort((a, b) => b.logWeight - a.logWeight);
  return { finalists, relaid };
}
