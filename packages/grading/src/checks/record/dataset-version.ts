import { compareVersions, type VersionStep, versionStep } from "../../grade/versionStep.ts";
import type { Check, Finding } from "../../model/index.ts";
import { good, report } from "../shared/report.ts";

/** What may be otherwise between two versions. */
const CHANGED: Readonly<Record<VersionStep, string>> = {
  major: "roles, terminals or limits may have changed their names or meanings, or have become stricter.",
  minor: "records or properties were added, or limits loosened; a grade can change with them.",
  patch: "texts or single figures of the reference were corrected; a grade can change with them.",
};

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
    const newer = compareVersions(writtenFor, version) > 0;
    const step = versionStep(writtenFor, version) ?? "patch";
    return [
      report(this, "restored", undefined, {
        ...base,
        severity: "watch",
        title: newer ? "The job was written for a newer reference" : "The job was written for an earlier reference",
        why: `A ${step} step: ${CHANGED[step]}`,
        action: newer
          ? "Update the reference, then grade again."
          : `Read the list of changes from ${writtenFor} to ${version}, check the stages that it names, then write ${version} into the job.`,
      }),
    ];
  },
};
