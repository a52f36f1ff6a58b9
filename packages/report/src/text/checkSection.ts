import { emptyWords } from "../view/emptyWords.ts";
import { count } from "../view/headFacts.ts";
import { warningSentence } from "../view/tables.ts";
import { type Outcome, outcomeWords } from "../view/words.ts";
import type { TextContext } from "./textContext.ts";
import { hang } from "./wrapText.ts";

const order: readonly Outcome[] = ["danger", "replace", "adjust", "watch", "good", "unmeasured", "not-applicable", "failed"];

/** Remarks on the job files that are printed; the full report has them all. */
const mostRemarks = 6;

/** How many checks came to what, then those that failed, then what could not be checked and why. */
export function checkLines({ sheet, width }: TextContext): string[] {
  const { checks, clearance } = sheet.report;
  if (checks.length === 0) return hang("  ", emptyWords.checksMade, width);
  const counts = order.flatMap((outcome) => {
    const number = checks.filter((check) => check.outcome === outcome).length;
    return number > 0 ? [`${number} ${outcomeWords[outcome]}`] : [];
  });
  const failed = checks.filter((check) => check.outcome === "failed");
  const told = new Map(sheet.report.findings.map((finding, index) => [finding.title, index + 1]));
  const notMade = [...new Set(clearance.notMade)];
  const numbers = notMade.flatMap((title) => told.get(title) ?? []);
  const others = notMade.filter((title) => !told.has(title));
  return [
    ...hang("  ", `${count(checks.length, "check")}: ${counts.join(", ")}.`, width),
    ...failed.flatMap(({ title, note }) => hang("  - could not be run: ", [title, note].filter(Boolean).join(": "), width)),
    ...(numbers.length > 0 ? hang("  Not made for want of a measurement: ", `finding ${numbers.join(", ")}.`, width) : []),
    ...(others.length > 0 ? hang("  Not made: ", others.join("; "), width) : []),
  ];
}

/** Remarks on the job files, as many as a screen bears. */
export function remarkLines({ sheet, width }: TextContext): string[] {
  const { warnings } = sheet.report;
  return [
    ...warnings.slice(0, mostRemarks).flatMap((warning) => hang("  - ", warningSentence(warning), width)),
    ...(warnings.length > mostRemarks ? [`  ${warnings.length - mostRemarks} more in the full report.`] : []),
  ];
}
