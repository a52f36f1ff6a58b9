import type { Check, Finding } from "../../model/index.ts";
import { good, report } from "../shared/report.ts";

/** Whether the job was written for the reference that it is graded with. */
export const datasetVersion: Check = {
  id: "dataset-version",
  area: "record",
  title: "Version of the reference",
  question: "Was this job written for the reference data that it is graded with?",
  needs: "datasetVersion in the job",
  sources: ["common-practice"],
  cautions: [],
  run(model): Finding[] {
    const { writtenFor } = model;
    if (writtenFor === undefined) return [];
    const { version } = model.dataset;
    const base = { found: `written for ${writtenFor}, graded with ${version}`, shouldBe: version };
    if (writtenFor === version)
      return [
        good(this, "restored", undefined, {
          ...base,
          title: "Written for this version of the reference",
          why: "Templates and limits are the ones that the job had in mind.",
        }),
      ];
    const [was, is] = [numbers(writtenFor), numbers(version)];
    const newer = compare(was, is) > 0;
    // Semantic versions: a first number of 0 promises nothing from one second number to the next.
    const breaking = was[0] !== is[0] || (is[0] === 0 && was[1] !== is[1]);
    return [
      report(this, "restored", undefined, {
        ...base,
        severity: "watch",
        title: newer ? "The job was written for a newer reference" : "The job was written for an earlier reference",
        why: breaking
          ? "Roles, terminals or limits may have changed their names or meanings between these versions."
          : "Values of the reference may have been corrected since; a grade can change with them.",
        action: newer
          ? "Update the reference, then grade again."
          : `Read the list of changes from ${writtenFor} to ${version}, check the stages that it names, then write ${version} into the job.`,
      }),
    ];
  },
};

const numbers = (version: string): number[] =>
  version
    .split(/[.+-]/)
    .slice(0, 3)
    .map((piece) => Number.parseInt(piece, 10) || 0);

function compare(a: readonly number[], b: readonly number[]): number {
  for (const [index, value] of a.entries()) {
    const difference = value - (b[index] ?? 0);
    if (difference !== 0) return difference;
  }
  return 0;
}
