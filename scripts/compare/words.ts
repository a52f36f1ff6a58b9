import { BUMPS } from "./bump.ts";
import type { Change } from "./change.ts";
import type { Comparison } from "./compare.ts";
import type { FigureChange } from "./compareReports.ts";
import type { JobComparison } from "./gradeBoth.ts";

const LONGEST = 90;

/** A value of a record in one short line. */
function shown(value: unknown): string {
  if (value === undefined) return "-";
  const text = typeof value === "string" ? value : JSON.stringify(value);
  return text.length > LONGEST ? `${text.slice(0, LONGEST - 3)}...` : text;
}

/** A change as cells: what, record, property, before, after, bump, why. */
export const CHANGE_HEAD = ["version", "what", "record", "property", "before", "now", "why"];
export function changeCells({ bump, what, kind, id, path, before, after, why }: Change): string[] {
  const values = what === "changed" ? [shown(before), shown(after)] : ["", ""];
  return [bump, what, `${kind} ${id}`, path ?? "", ...values, why];
}

const OUTCOMES: Readonly<Record<JobComparison["outcome"], string>> = {
  same: "grades as before",
  different: "grades otherwise",
  "refused-now": "can no longer be graded",
  "refused-before": "could not be graded before, and can now",
  "refused-by-both": "can be graded with neither",
};

const figure = (value: number): string => Number(value.toPrecision(4)).toString();

/** One figure of a place: "nominal 307.1 -> 301.2 (-1.9 %)". */
function moved({ figure: which, before, after }: FigureChange): string {
  const share = before === 0 ? "" : ` (${(100 * (after / before - 1)).toFixed(1)} %)`;
  return `${which} ${figure(before)} -> ${figure(after)}${share}`;
}

/** What changed for one job, a line each; of a place that reads otherwise all its figures on one. */
export function jobLines({ change, message }: JobComparison): string[] {
  if (change === undefined) return message === undefined ? [] : [message];
  const { clearance, findings, verdicts, expected, points } = change;
  return [
    ...(clearance === undefined ? [] : [`clearance: ${clearance.before} -> ${clearance.after}`]),
    ...findings.map(({ what, check, title, about, before, after }) => {
      const how = what === "severity" ? `${before} -> ${after}` : what === "added" ? `new, ${after}` : `gone, was ${before}`;
      return `finding ${how}: ${title} (${check}; ${about})`;
    }),
    ...verdicts.map(({ where, before, after }) => `reading ${where}: ${before} -> ${after}`),
    ...points.map(({ what, where }) => `expected ${what === "gone" ? "no longer" : "newly"}: ${where}`),
    ...[...new Set(expected.map(({ where }) => where))].map(
      (where) =>
        `expected at ${where}: ${expected
          .filter((each) => each.where === where)
          .map(moved)
          .join(", ")}`,
    ),
  ];
}

/** The jobs that grade otherwise or cannot be graded, the gravest first. */
export function jobsToShow({ jobs }: Comparison): JobComparison[] {
  return jobs.filter(({ outcome }) => outcome !== "same").sort((a, b) => BUMPS.indexOf(b.bump) - BUMPS.indexOf(a.bump));
}

/** How many grade as before; undefined where there are none. */
export function alikeSentence({ jobs }: Comparison): string | undefined {
  const alike = jobs.filter(({ outcome }) => outcome === "same").length;
  if (alike === 0) return undefined;
  const which = alike === jobs.length ? "recorded" : "other recorded";
  return alike === 1 ? `One ${which} job grades as before.` : `${alike} ${which} jobs grade as before.`;
}

export const jobTitle = ({ job, outcome }: JobComparison): string => `${job} ${OUTCOMES[outcome]}`;

/** The verdict on the version, in a sentence or two. */
export function versionSentence({ versionBefore, versionAfter, due, because, leastVersion, raisedEnough }: Comparison): string {
  const now = `datasets/manifest.json has ${versionAfter}, it had ${versionBefore}.`;
  const call = raisedEnough ? "Raised enough." : `Not raised enough: it needs ${leastVersion} at least.`;
  if (due === "none") return `No bump is due: ${because}. ${now}${raisedEnough ? "" : ` ${call}`}`;
  return `A ${due} bump is due because of ${because}. ${now} ${call}`;
}
