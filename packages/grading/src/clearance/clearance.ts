import { CLEARANCES, type ClearanceLevel, type Finding } from "../model/index.ts";

/** What a severity forbids where the check itself names no step: a danger all power, a part to replace the handing back. */
const DEFAULT_HOLD: Partial<Record<Finding["severity"], Hold["step"]>> = { danger: "current-limited", replace: "service" };

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
 * nothing: what stands on the bench is judged. Where a check names no step its severity decides.
 * A job in which no check found anything to look at, good or bad, clears nothing.
 *
 * @param findings worst first
 * @param unseen what could not be looked at, and the lowest step that must not be taken unseen
 */
export function clearanceOf(findings: readonly Finding[], unseen: readonly Pick<Hold, "step" | "reason">[] = []): Clearance {
  if (findings.length === 0) return { level: "none", next: "current-limited", holds: [] };
  const holds = findings.flatMap((finding, index): Hold[] => {
    if (finding.life === "planned" || finding.severity === "good") return [];
    const step = finding.holds ?? DEFAULT_HOLD[finding.severity];
    return step === undefined ? [] : [{ step, reason: finding.title, finding: index }];
  });
  for (const hold of unseen) holds.push({ ...hold, finding: -1 });
  const rank = (step: ClearanceLevel) => CLEARANCES.indexOf(step);
  holds.sort((a, b) => rank(a.step) - rank(b.step) || a.finding - b.finding);
  const lowest = holds[0]?.step;
  if (lowest === undefined) return { level: "service", holds };
  return { level: CLEARANCES[rank(lowest) - 1] ?? "none", next: lowest, holds };
}
