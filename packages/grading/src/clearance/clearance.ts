import { CLEARANCES, type ClearanceLevel, type Finding } from "../model/index.ts";

export interface Hold {
  step: Exclude<ClearanceLevel, "none">;
  reason: string;
  finding: number;
}

export interface Clearance {
  level: ClearanceLevel;
  next?: Exclude<ClearanceLevel, "none">;
  holds: Hold[];
}

/**
 * The highest step of bringing-up that no finding forbids. A finding forbids its step and all above. Findings about plans forbid
 * nothing: what stands on the bench is judged. Severity decides where a check names no step: danger forbids even limited current.
 * A job in which no check found anything to look at, good or bad, clears nothing.
 *
 * @param findings worst first
 */
export function clearanceOf(findings: readonly Finding[]): Clearance {
  if (findings.length === 0) return { level: "none", next: "current-limited", holds: [] };
  const holds = findings.flatMap((finding, index): Hold[] => {
    if (finding.life === "planned" || finding.severity === "good") return [];
    const step = finding.holds ?? (finding.severity === "danger" ? "current-limited" : undefined);
    return step === undefined ? [] : [{ step, reason: finding.title, finding: index }];
  });
  const rank = (step: ClearanceLevel) => CLEARANCES.indexOf(step);
  holds.sort((a, b) => rank(a.step) - rank(b.step) || a.finding - b.finding);
  const lowest = holds[0]?.step;
  if (lowest === undefined) return { level: "service", holds };
  return { level: CLEARANCES[rank(lowest) - 1] ?? "none", next: lowest, holds };
}
