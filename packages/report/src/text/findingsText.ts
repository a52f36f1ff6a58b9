import { findingHeading } from "../view/findingHeading.ts";
import { keyFigure } from "../view/keyFigure.ts";
import type { NumberedFinding, Sheet } from "../view/sheet.ts";
import { type Severity, severityWords } from "../view/words.ts";

/** What was found is added to a finding without figures only up to this length; longer lists wait in the full report. */
const shortFound = 60;

/** The title without the names of the part and stage under which it is printed. */
function bareTitle(title: string, subjects: readonly string[]): string {
  for (const lead of subjects.filter(Boolean).flatMap((subject) => [`${subject}: `, `${subject} `])) {
    if (title.startsWith(lead)) return title.slice(lead.length);
  }
  return title;
}

/** What is not measured, without saying so once more. */
function missing({ severity, found }: NumberedFinding["finding"]): string {
  return severity === "unmeasured" && found.length <= shortFound ? found.replace(/^not measured: /, "") : "";
}

function findingText({ number, finding }: NumberedFinding, subjects: readonly string[]): string {
  const title = findingHeading({ ...finding, title: bareTitle(finding.title, subjects) });
  const figure = keyFigure(finding) || missing(finding);
  return `(${number}) ${title}${figure ? `: ${figure}` : ""}.`;
}

/**
 * Findings of one part or stage as running text, worst first, each with its number, title and most telling figure; the severity
 * is said where it differs from the one before, at first from `severity`. Dangers are named by number only: their figures stand
 * in their own section. `subjects` are the names that stand above and need not be said again.
 */
export function findingsText(findings: readonly NumberedFinding[], severity: Severity, subjects: readonly string[], sheet: Sheet): string {
  const isDanger = ({ number }: NumberedFinding): boolean => sheet.dangers.some((danger) => danger.number === number);
  const dangers = findings.filter(isDanger).map(({ number }) => number);
  const texts = dangers.length > 0 ? [`See danger ${dangers.join(", ")}.`] : [];
  let said = severity;
  for (const numbered of findings.filter((each) => !isDanger(each))) {
    const own = numbered.finding.severity;
    texts.push(`${own === said ? "" : `${severityWords[own]} `}${findingText(numbered, subjects)}`);
    said = own;
  }
  return texts.join(" ");
}
