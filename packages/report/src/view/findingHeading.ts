import type { ReportFinding } from "@underchassis/dataset";

/** A finding's title; one that is about a plan says so, since nothing of it stands on the bench yet. */
export function findingHeading(finding: ReportFinding): string {
  return finding.life === "planned" ? `If done as planned: ${finding.title}` : finding.title;
}
