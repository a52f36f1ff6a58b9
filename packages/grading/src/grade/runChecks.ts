import { type ChassisModel, type Check, type Finding, SEVERITIES } from "../model/index.ts";

export interface CheckRun {
  check: Check;
  findings: readonly Finding[];
  /** Message of a check that threw; its findings are then missing. */
  failure?: string;
}

/** Runs every check. One that throws does not stop the others; its failure is reported as such. */
export function runChecks(model: ChassisModel, checks: readonly Check[]): CheckRun[] {
  return checks.map((check) => {
    try {
      return { check, findings: check.run(model) };
    } catch (error) {
      return { check, findings: [], failure: error instanceof Error ? error.message : String(error) };
    }
  });
}

/** Worst first; within a severity the ones that hold the earliest step, then as the checks and parts come. */
export function sortFindings(findings: readonly Finding[]): Finding[] {
  const holdRank = { "current-limited": 0, "full-line": 1, service: 2 } as const;
  const rank = (finding: Finding) =>
    SEVERITIES.indexOf(finding.severity) * 10 +
    (finding.life === "planned" ? 5 : 0) +
    (finding.holds === undefined ? 3 : holdRank[finding.holds]);
  return findings
    .map((finding, index) => ({ finding, index }))
    .sort((a, b) => rank(a.finding) - rank(b.finding) || a.index - b.index)
    .map(({ finding }) => finding);
}

/**
 * Drops what the plans do not change: a good word about a planned chassis, and a planned finding that the chassis as it stands
 * already has, figure for figure of its wording.
 */
export function withoutEchoes(findings: readonly Finding[]): Finding[] {
  const key = ({ check, severity, part, point, title, found }: Finding) => [check, severity, part, point, title, found].join("\u0000");
  const standing = new Set(findings.filter(({ life }) => life !== "planned").map(key));
  return findings.filter((finding) => finding.life !== "planned" || (finding.severity !== "good" && !standing.has(key(finding))));
}
