import type { ReportFinding } from "@underchassis/dataset";
import { isRecord, listOf, oneOf, type Path, recordOf } from "@underchassis/source-text";
import type { Complaint, ElectricalRule } from "../../model/rule.ts";

const STORE_ANEW = "look first at what was changed, a figure or a part; where the new grade is meant, npm run golden stores it";
const RECORD_HERE = "mend what changed the grade, or, where the new one is right, record it here";

/** Jobs grade as they are recorded to. */
export const jobGrade: ElectricalRule = {
  code: "UC-712",
  name: "job-grade",
  scope: "electrical",
  of: "job",
  severity: "error",
  title: "Every demo and example job grades as it is recorded to: clearance, and the findings that count",
  why: "A change of data that changes a grade must be seen by whoever makes it.",
  bad: "a changed table row that takes a finding away",
  good: "the same, with the record brought up to date",
  check({ file, graded, recorded }) {
    if (!graded.ok) return graded.diagnostics.map(({ message }) => ({ message: `the job cannot be graded: ${message}` }));
    const { clearance, findings } = graded.report;
    if (recorded.kind === "none")
      return file.startsWith("datasets/jobs/") ? [] : [{ message: "no expected.json says what this example must come to" }];
    if (recorded.kind === "report") {
      const complaints: Complaint[] = [];
      const report = recordOf(recorded.value);
      const { level } = recordOf(report.clearance);
      if (clearance.level !== level)
        complaints.push({
          message: "the clearance is not the stored report's",
          received: clearance.level,
          expected: String(level),
          help: STORE_ANEW,
        });
      const keys = (list: readonly unknown[]) =>
        new Set(
          list.filter(isRecord).map(({ check, part, point, stage, severity }) => [severity, check, part ?? point ?? stage].join(" ")),
        );
      const [now, then] = [keys(findings), keys(listOf(report.findings))];
      const gone = [...then].filter((key) => !now.has(key));
      const fresh = [...now].filter((key) => !then.has(key));
      if (gone.length > 0)
        complaints.push({
          message: `${gone.length} recorded findings are gone`,
          received: gone.slice(0, 5).join("; "),
          help: STORE_ANEW,
        });
      if (fresh.length > 0)
        complaints.push({
          message: `${fresh.length} findings are new`,
          received: fresh.slice(0, 5).join("; "),
          help: STORE_ANEW,
        });
      return complaints;
    }
    const wanted = recordOf(recorded.value);
    const complaints: (Complaint & { file: string })[] = [];
    const at = (...path: Path) => ({ file: recorded.file, at: { path: [...recorded.path, ...path] } });
    const compare = (what: string, property: string, now: string) => {
      const then = wanted[property];
      if (typeof then === "string" && now !== then)
        complaints.push({
          ...at(property),
          message: `${what} of ${file} is not the one recorded`,
          received: `the job comes to ${now}`,
          expected: then,
          help: RECORD_HERE,
        });
    };
    compare("the clearance", "clearance", clearance.level);
    if (typeof wanted.worst === "string") {
      const worst =
        ["danger", "replace", "adjust", "watch"].find((severity) => findings.some((finding) => finding.severity === severity)) ?? "good";
      compare("the gravest finding", "worst", worst);
    }
    for (const [index, find] of listOf(wanted.finds).map(recordOf).entries()) {
      const found = findings.some(
        ({ check, severity, part, point, stage, title }) =>
          check === find.check &&
          severity === find.severity &&
          [part, point, stage].includes(String(find.part)) &&
          (find.title === undefined || title.includes(String(find.title))),
      );
      if (!found)
        complaints.push({
          ...at("finds", index),
          message: `${file} does not come to the finding that it is about`,
          received: `the job comes to ${oneOf(made(findings, find))}`,
          expected: `${String(find.severity)} ${String(find.check)} on ${String(find.part)}`,
          help: RECORD_HERE,
        });
    }
    return complaints;
  },
};

/** The findings that come nearest to a wanted one: on the same part, or else of the same check, or else all that are grave. */
function made(findings: readonly ReportFinding[], wanted: Readonly<Record<string, unknown>>): string[] {
  const near = [
    findings.filter(({ part, point, stage }) => [part, point, stage].includes(String(wanted.part))),
    findings.filter(({ check }) => check === wanted.check),
    findings.filter(({ severity }) => severity === "danger" || severity === "replace"),
  ].find((list) => list.length > 0);
  return (near ?? [])
    .slice(0, 5)
    .map(({ severity, check, part, point, stage }) => `${severity} ${check} on ${part ?? point ?? stage ?? "the chassis"}`);
}
