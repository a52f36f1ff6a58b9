/** Plays every stored case of the chosen chassis. */
import type { Dataset } from "@underchassis/dataset";
import { type CaseFile, readCaseFile, type StoredCase } from "../cases/caseFile.ts";
import { CaseMaker } from "../cases/caseMaker.ts";
import { CHASSIS_IDS, type Half, halfOf, modelOfJob, readChassis } from "../chassisFiles.ts";
import { describeFault } from "../faults/seededFault.ts";
import { byPrior, hypothesesOf, NearestSignature } from "./baselines.ts";
import { isHit, type NamedFault } from "./hit.ts";
import { type Played, type PlaySetting, playCase, type Search } from "./playCase.ts";
import { type Score, scoreCase } from "./scoreCase.ts";

export interface BenchOptions {
  half?: Half;
  chassis?: string;
  /** Most cases and most healthy chassis of each chassis file. */
  cases: number;
  healthy: number;
  measurements: number;
  baselines: boolean;
  log(line: string): void;
}

/** Where a baseline puts the fault: 1 is first; undefined: not among the first ten. */
export interface BaselineRanks {
  priors?: number;
  nearest?: number;
}

export interface PlayedCase {
  chassis: string;
  half: Half;
  faults: string;
  detectable: boolean;
  atFirstReadings: boolean;
  double: boolean;
  score: Score;
  /** Leader in words. */
  leader: string;
  baselines: BaselineRanks;
}

export interface BenchResult {
  cases: PlayedCase[];
  healthy: { chassis: string; half: Half; verdict: string; posterior: number }[];
  searches: number;
  cpuSeconds: number;
  hypotheses: number;
  measurements: number;
  /** Chassis without stored readings, and those whose netlist has changed since. */
  missing: string[];
  stale: string[];
}

const LIST = 10;

export function runBench(dataset: Dataset, search: Search, options: BenchOptions): BenchResult {
  const result: BenchResult = {
    cases: [],
    healthy: [],
    searches: 0,
    cpuSeconds: 0,
    hypotheses: 0,
    measurements: options.measurements,
    missing: [],
    stale: [],
  };
  const chosen = CHASSIS_IDS.filter((id) => (options.half ?? halfOf(id)) === halfOf(id) && (options.chassis ?? id) === id);
  if (chosen.length === 0) throw new Error(`no such chassis; there are ${CHASSIS_IDS.join(", ")}`);
  for (const id of chosen) {
    const file = readCaseFile(id);
    if (file === undefined) {
      result.missing.push(id);
      continue;
    }
    if (new CaseMaker(id, dataset).netlist !== file.netlist) result.stale.push(id);
    playChassis(result, dataset, search, options, file);
  }
  return result;
}

function playChassis(result: BenchResult, dataset: Dataset, search: Search, options: BenchOptions, file: CaseFile): void {
  const { job, play } = readChassis(file.chassis);
  const model = modelOfJob(job, dataset);
  const setting: PlaySetting = { model, file, play, search, measurements: options.measurements };
  const half = halfOf(file.chassis);
  const hypotheses = options.baselines ? hypothesesOf(model) : [];
  const prior = byPrior(hypotheses);
  const nearest = new NearestSignature(model, hypotheses);
  const count = (played: Played): void => {
    result.searches += played.searches;
    result.cpuSeconds += played.cpuSeconds;
    result.hypotheses += played.hypotheses;
  };
  for (const stored of someOf(file.cases, options.cases)) {
    const played = playCase(setting, stored);
    count(played);
    const double = stored.faults.length > 1;
    const leader = played.report.suspects[0];
    result.cases.push({
      chassis: file.chassis,
      half,
      faults: stored.faults.map(describeFault).join(" + "),
      detectable: stored.detectable,
      atFirstReadings: stored.atFirstReadings,
      double,
      score: scoreCase(stored, played),
      leader: leader === undefined ? played.report.verdict : `${leader.title} (${(100 * leader.posterior).toFixed(0)} %)`,
      baselines:
        options.baselines && !double ? ranksOf(stored, prior, nearest.rank(played.readings, play.dc.length + play.ripple.length)) : {},
    });
  }
  for (const stored of file.healthy.slice(0, options.healthy)) {
    const played = playCase({ ...setting, measurements: 0 }, stored);
    count(played);
    const { verdict, suspects } = played.report;
    result.healthy.push({ chassis: file.chassis, half, verdict, posterior: suspects[0]?.posterior ?? 0 });
  }
  options.log(
    `${file.chassis}: ${result.cases.length} cases, ${result.healthy.length} healthy so far, ${result.cpuSeconds.toFixed(0)} s of CPU`,
  );
}

/** Evenly spread over the list, so that few cases still are of every kind, two faults among them. */
function someOf(cases: readonly StoredCase[], most: number): StoredCase[] {
  if (most >= cases.length) return [...cases];
  return Array.from({ length: most }, (_, i) => cases[Math.floor(((i + 0.5) * cases.length) / most)]).filter((each) => each !== undefined);
}

function ranksOf(stored: StoredCase, prior: readonly { fault: NamedFault }[], nearest: readonly { fault: NamedFault }[]): BaselineRanks {
  const rank = (list: readonly { fault: NamedFault }[]): number | undefined => {
    const index = list.slice(0, LIST).findIndex(({ fault }) => stored.faults.some((seeded) => isHit(seeded, fault)));
    return index < 0 ? undefined : index + 1;
  };
  const [priors, near] = [rank(prior), rank(nearest)];
  return { ...(priors === undefined ? {} : { priors }), ...(near === undefined ? {} : { nearest: near }) };
}
