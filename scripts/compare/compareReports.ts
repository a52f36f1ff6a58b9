import type { Report, ReportFinding } from "@underchassis/dataset";
import type { Bump } from "./bump.ts";

/** A finding that one of two gradings has and the other has not, or has in another severity. */
export interface FindingChange {
  what: "added" | "gone" | "severity";
  check: string;
  title: string;
  about: string;
  before?: ReportFinding["severity"];
  after?: ReportFinding["severity"];
}

/** A computed figure that moved. */
export interface FigureChange {
  where: string;
  figure: "nominal" | "low" | "high" | "ripple";
  before: number;
  after: number;
}

/** A place at which one of two gradings expects something and the other does not. */
export interface PointChange {
  what: "added" | "gone";
  where: string;
}

/** How one recorded job grades otherwise. */
export interface ReportChange {
  clearance?: { before: string; after: string };
  findings: FindingChange[];
  verdicts: { where: string; before: string; after: string }[];
  expected: FigureChange[];
  points: PointChange[];
}

const SEVERITIES: readonly ReportFinding["severity"][] = ["danger", "replace", "adjust", "watch", "unmeasured", "good"];
const LEVELS = ["none", "current-limited", "full-line", "service"];
/** Computed values that moved by less are the solver's business. */
const MOVED = 0.005;
/** Volts below which a share says nothing. */
const NOTHING_VOLTS = 0.01;

const aboutOf = ({ stage, part, point, condition, life }: ReportFinding): string =>
  [stage, part, point, condition, life].filter(Boolean).join(", ");
const subjectOf = (finding: ReportFinding): string => `${finding.check} | ${aboutOf(finding)}`;

function grouped(findings: readonly ReportFinding[]): Map<string, ReportFinding[]> {
  const groups = new Map<string, ReportFinding[]>();
  for (const finding of findings) groups.set(subjectOf(finding), [...(groups.get(subjectOf(finding)) ?? []), finding]);
  return groups;
}

const told = (finding: ReportFinding) => ({ check: finding.check, title: finding.title, about: aboutOf(finding) });

/** Findings on one subject, first paired by title, the rest by their order: a title may carry a figure that moved. */
function pairs(
  before: readonly ReportFinding[],
  after: readonly ReportFinding[],
): [ReportFinding | undefined, ReportFinding | undefined][] {
  const left = [...after];
  const take = (index: number) => (index < 0 ? undefined : left.splice(index, 1)[0]);
  const byTitle = before.map((finding) => [finding, take(left.findIndex(({ title }) => title === finding.title))] as const);
  const byOrder = byTitle.map(([was, is]): [ReportFinding, ReportFinding | undefined] => [was, is ?? left.shift()]);
  return [...byOrder, ...left.map((finding): [undefined, ReportFinding] => [undefined, finding])];
}

function findingChanges(before: Report, after: Report): FindingChange[] {
  const [one, other] = [grouped(before.findings), grouped(after.findings)];
  return [...new Set([...one.keys(), ...other.keys()])].flatMap((subject) =>
    pairs(one.get(subject) ?? [], other.get(subject) ?? []).flatMap(([was, is]): FindingChange[] => {
      if (was === undefined) return is === undefined ? [] : [{ what: "added", ...told(is), after: is.severity }];
      if (is === undefined) return [{ what: "gone", ...told(was), before: was.severity }];
      return was.severity === is.severity ? [] : [{ what: "severity", ...told(is), before: was.severity, after: is.severity }];
    }),
  );
}

const key = ({ point, to, condition, quantity, life }: Report["expected"][number]): string =>
  `${point} to ${to}, ${quantity}, ${condition}, ${life}`;

function pointChanges(before: Report, after: Report): PointChange[] {
  const [one, other] = [before, after].map(({ expected }) => new Set(expected.map(key))) as [Set<string>, Set<string>];
  return [
    ...[...one].filter((where) => !other.has(where)).map((where) => ({ what: "gone" as const, where })),
    ...[...other].filter((where) => !one.has(where)).map((where) => ({ what: "added" as const, where })),
  ];
}

function expectedChanges(before: Report, after: Report): FigureChange[] {
  const known = new Map(before.expected.map((line) => [key(line), line]));
  return after.expected.flatMap((line) => {
    const was = known.get(key(line));
    if (was === undefined) return [];
    return (["nominal", "low", "high", "ripple"] as const).flatMap((figure): FigureChange[] => {
      const [one, other] = [was[figure], line[figure]];
      if (one === undefined || other === undefined) return [];
      const size = Math.max(Math.abs(one), Math.abs(other));
      return size > NOTHING_VOLTS && Math.abs(one - other) > MOVED * size ? [{ where: key(line), figure, before: one, after: other }] : [];
    });
  });
}

function verdictChanges(before: Report, after: Report): ReportChange["verdicts"] {
  return before.readings.flatMap((reading, index) => {
    const now = after.readings[index];
    if (now === undefined || now.verdict === reading.verdict) return [];
    return [
      {
        where: `${reading.at} to ${reading.to}, ${reading.quantity}, ${reading.condition}, ${reading.life}`,
        before: reading.verdict,
        after: now.verdict,
      },
    ];
  });
}

/** How a job's second report differs from its first; the job itself is the same. */
export function compareReports(before: Report, after: Report): ReportChange {
  const [was, is] = [before.clearance.level, after.clearance.level];
  return {
    ...(was === is ? {} : { clearance: { before: was, after: is } }),
    findings: findingChanges(before, after),
    verdicts: verdictChanges(before, after),
    expected: expectedChanges(before, after),
    points: pointChanges(before, after),
  };
}

const rank = (severity: ReportFinding["severity"] | undefined): number =>
  severity === undefined ? SEVERITIES.length : SEVERITIES.indexOf(severity);

/** What a job's change asks of the version: worse by a finding or by clearance is major, otherwise different minor. */
export function bumpOf({ clearance, findings, verdicts, expected, points }: ReportChange): Bump {
  const lower = clearance !== undefined && LEVELS.indexOf(clearance.after) < LEVELS.indexOf(clearance.before);
  // `good` found or lost is no worse; neither is `unmeasured` in its place, which names what to measure.
  const worse = findings.some(({ before, after }) => after !== undefined && rank(after) < rank("unmeasured") && rank(after) < rank(before));
  if (lower || worse) return "major";
  return clearance !== undefined || findings.length + verdicts.length + expected.length + points.length > 0 ? "minor" : "none";
}
