import { isRecord, listOf, recordOf } from "@underchassis/source-text";
import type { Complaint, ElectricalRule } from "../../model/rule.ts";

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
    const complaints: Complaint[] = [];
    const compare = (what: string, now: string, then: unknown) => {
      if (typeof then === "string" && now !== then) complaints.push({ message: `${what} has changed`, received: now, expected: then });
    };
    if (recorded.kind === "report") {
      const report = recordOf(recorded.value);
      compare("the clearance", clearance.level, recordOf(report.clearance).level);
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
          help: "npm run golden stores reports anew",
        });
      if (fresh.length > 0)
        complaints.push({
          message: `${fresh.length} findings are new`,
          received: fresh.slice(0, 5).join("; "),
          help: "npm run golden stores reports anew",
        });
      return complaints;
    }
    const wanted = recordOf(recorded.value);
    compare("the clearance", clearance.level, wanted.clearance);
    if (typeof wanted.worst === "string") {
      const worst =
        ["danger", "replace", "adjust", "watch"].find((severity) => findings.some((finding) => finding.severity === severity)) ?? "good";
      compare("the gravest finding", worst, wanted.worst);
    }
    for (const find of listOf(wanted.finds).map(recordOf)) {
      const found = findings.some(
        ({ check, severity, part, point, stage, title }) =>
          check === find.check &&
          severity === find.severity &&
          [part, point, stage].includes(String(find.part)) &&
          (find.title === undefined || title.includes(String(find.title))),
      );
      if (!found)
        complaints.push({
          message: "a finding that this example is about is not made",
          expected: `${String(find.severity)} ${String(find.check)} on ${String(find.part)}`,
        });
    }
    return complaints;
  },
};
