/** The benchmark's figures as lines of text. */
import type { BaselineRanks, BenchResult, PlayedCase } from "./runBench.ts";
import { SUMMARY_HEAD, summarise, summaryLine } from "./summary.ts";

const percent = (part: number, whole: number): string => (whole === 0 ? "-" : `${((100 * part) / whole).toFixed(1)} %`);

function table(title: string, cases: readonly PlayedCase[], keyOf: (each: PlayedCase) => string): string[] {
  const keys = [...new Set(cases.map(keyOf))].sort();
  const line = (key: string): string => summaryLine(key, summarise(cases.filter((each) => keyOf(each) === key).map(({ score }) => score)));
  return ["", title, SUMMARY_HEAD, ...keys.map(line)];
}

function baselineLine(name: string, cases: readonly PlayedCase[], of: (ranks: BaselineRanks) => number | undefined): string {
  const within = (most: number): string =>
    percent(cases.filter(({ baselines }) => (of(baselines) ?? Number.POSITIVE_INFINITY) <= most).length, cases.length);
  return `${name.padEnd(22)} ${String(cases.length).padStart(5)}  top-1 ${within(1)}  top-3 ${within(3)}  top-10 ${within(10)}`;
}

export function printBench(result: BenchResult): string[] {
  const single = result.cases.filter(({ double }) => !double);
  const shows = single.filter(({ atFirstReadings }) => atFirstReadings);
  const doubles = result.cases.filter(({ double, atFirstReadings }) => double && atFirstReadings);
  const all = summarise(shows.map(({ score }) => score));
  const alarms = result.healthy.filter(({ verdict }) => verdict !== "nothing-off");
  const found = doubles.filter(({ score }) => score.residual);
  const named = doubles.filter(({ score }) => score.groupTop1);
  const notSingle = shows.filter(({ score }) => score.residual).length;
  const lines = [
    `Seeded faults, first readings and at most ${result.measurements} measurements more. Single faults: ${single.length}; ${single.filter(({ detectable }) => detectable).length} show in some stored reading, ${shows.length} in the first readings. All figures below are of these ${shows.length}.`,
    "",
    SUMMARY_HEAD,
    summaryLine("all that show", all),
    summaryLine("all that show anywhere", summarise(single.filter(({ detectable }) => detectable).map(({ score }) => score))),
    ...table("by half", shows, ({ half }) => half),
    ...table("by kind", shows, ({ score }) => score.kind),
    ...table("by chassis", shows, ({ chassis, half }) => `${chassis.slice(0, 18)} ${half.slice(0, 1)}`),
    "",
    `calibration: ${all.sure} leaders with 90 % belief or more, right in ${percent(all.sureRight * all.sure, all.sure)} (a member of the group)`,
    `false alarms: ${alarms.length} of ${result.healthy.length} healthy chassis (${percent(alarms.length, result.healthy.length)})`,
    `two faults at once: ${doubles.length}; said so or left a reading over: ${percent(found.length, doubles.length)}; one of the two leads: ${percent(named.length, doubles.length)}`,
    `single faults that the search calls more than its leader: ${percent(notSingle, shows.length)}`,
    `asked for what the tables do not hold: ${percent(all.unanswered * all.cases, all.cases)}`,
    `CPU: ${(result.cpuSeconds / Math.max(1, result.searches)).toFixed(2)} s a search, ${(result.hypotheses / Math.max(1e-9, result.cpuSeconds)).toFixed(0)} hypotheses a second, ${result.searches} searches`,
  ];
  if (shows.some(({ baselines }) => Object.keys(baselines).length > 0)) {
    lines.push("", "baselines over the same readings (one fault, no groups)");
    lines.push(baselineLine("priors alone", shows, ({ priors }) => priors));
    lines.push(baselineLine("nearest signature", shows, ({ nearest }) => nearest));
  }
  if (result.missing.length > 0) lines.push("", `no stored readings: ${result.missing.join(", ")} (npx tsx scripts/make-fault-cases.ts)`);
  if (result.stale.length > 0)
    lines.push("", `STALE: the netlist has changed since the readings were simulated: ${result.stale.join(", ")}`);
  return lines;
}
