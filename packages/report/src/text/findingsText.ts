import { findingHeading } from "../view/findingHeading.ts";
import { type IsFromMemory, keyFigure } from "../view/keyFigure.ts";
import type { NumberedFinding } from "../view/sheet.ts";
import { type Severity, severityWords } from "../view/words.ts";

/** The title without the names of the part and stage under which it is printed. */
function bareTitle(title: string, subjects: readonly string[]): string {
  for (const lead of subjects.filter(Boolean).flatMap((subject) => [`${subject}: `, `${subject} `])) {
    if (title.startsWith(lead)) return title.slice(lead.length);
  }
  return title;
}

/** Names of what is not measured, where a finding counts them only. */
function missing({ found }: NumberedFinding["finding"]): string {
  return /^not measured: (.+)/.exec(found)?.[1] ?? "";
}

function findingText({ number, finding }: NumberedFinding, subjects: readonly string[], isFromMemory: IsFromMemory): string {
  const title = findingHeading({ ...finding, title: bareTitle(finding.title, subjects) });
  const figure = keyFigure(finding, isFromMemory) || missing(finding);
  return `(${number}) ${title}${figure ? `: ${figure}` : ""}.`;
}

/**
 * Findings of one part or stage as running text, worst first, each with its number, title and most telling figure; the severity
 * is said where it differs from the one before, at first from `severity`. Dangers are named by number only: their figures stand
 * in their own section. `subjects` are the names that stand above and need not be said again.
 */
export function findingsText(
  findings: readonly NumberedFinding[],
  severity: Severity,
  subjects: readonly string[],
  isFromMemory: IsFromMemory,
): string {
  const dangers = findings.filter(({ finding }) => finding.severity === "danger");
  const others = findings.filter(({ finding }) => finding.severity !== "danger");
  const texts: [Severity, string][] = others.map((numbered) => [numbered.finding.severity, findingText(numbered, subjects, isFromMemory)]);
  if (dangers.length > 0) texts.unshift(["danger", `${dangers.map(({ number }) => `(${number})`).join(", ")} see Dangers.`]);
  return texts
    .map(([own, text], index) => (own === (texts[index - 1]?.[0] ?? severity) ? text : `${severityWords[own]} ${text}`))
    .join(" ");
}
