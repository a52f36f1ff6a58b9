import type { Report, ReportFinding } from "@underchassis/dataset";
import { withShortPlaces } from "./shortPlaces.ts";
import { type SourceName, sourceNames } from "./sourceNames.ts";
import { lifeWord, type Severity } from "./words.ts";

/** A finding with the number by which the sheet refers to it: 1 for the first of report.findings. */
export interface NumberedFinding {
  number: number;
  finding: ReportFinding;
}

/** What every renderer asks of a report: numbered findings, names behind ids, what belongs where. */
export interface Sheet {
  report: Report;
  dangers: readonly NumberedFinding[];
  /** Findings that no stage lists. */
  loose: readonly NumberedFinding[];
  /** Numbered finding at an index of report.findings; undefined for -1 and for an index that points nowhere. */
  findingAt(index: number): NumberedFinding | undefined;
  /** Findings at some indices, worst first as in the report, without repeats. */
  findingsAt(indices: readonly number[]): readonly NumberedFinding[];
  source(id: string): SourceName;
  /** The source with this id is somebody's memory: what rests on it must say so. */
  isFromMemory(id: string): boolean;
  /** Title of a caution, or its id when the report does not print it. */
  cautionTitle(id: string): string;
  /** Part, point, condition and life that a finding is about: "C1, at B+, operating, as found". */
  about(finding: ReportFinding): string;
  checksMade: Report["checks"];
  checksNotMade: Report["checks"];
}

const notMade = new Set<Report["checks"][number]["outcome"]>(["unmeasured", "not-applicable", "failed"]);

/** Prepares a report for rendering. The report should have gone through `cleanReport`. */
export function sheetOf(given: Report): Sheet {
  const report = withShortPlaces(given);
  const numbered = report.findings.map((finding, index) => ({ number: index + 1, finding }));
  const staged = new Set(report.stages.flatMap((stage) => stage.findings));
  const cautions = new Map(report.cautions.map((caution) => [caution.id, caution.title]));
  const partNames = new Map(report.stages.flatMap((stage) => stage.parts.map((part) => [part.id, part.name] as const)));
  return {
    report,
    dangers: numbered.filter(({ finding }) => finding.severity === "danger"),
    loose: numbered.filter(({ number }) => !staged.has(number - 1)),
    findingAt: (index) => numbered[index],
    findingsAt: (indices) => [...new Set(indices)].sort((one, other) => one - other).flatMap((index) => numbered[index] ?? []),
    source: sourceNames(report),
    isFromMemory: (id) => (report.sources.find((source) => source.id === id)?.kind ?? id) === "from-memory",
    cautionTitle: (id) => cautions.get(id) ?? id,
    about: ({ part, point, condition, life }) => {
      const name = part === undefined ? undefined : (partNames.get(part) ?? part);
      return [name, point && `at ${point}`, condition, lifeWord(life)].filter(Boolean).join(", ");
    },
    checksMade: report.checks.filter((check) => !notMade.has(check.outcome)),
    checksNotMade: report.checks.filter((check) => notMade.has(check.outcome)),
  };
}

/** "2 danger, 1 replace, 0 adjust ..." in the order of severity. */
export function countsSentence(counts: Report["counts"], words: Readonly<Record<Severity, string>>): string {
  const order: readonly Severity[] = ["danger", "replace", "adjust", "watch", "unmeasured", "good"];
  return order.map((severity) => `${counts[severity]} ${words[severity]}`).join(", ");
}
