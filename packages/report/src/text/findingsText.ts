import { findingHeading } from "../view/findingHeading.ts";
import { keyFigure } from "../view/keyFigure.ts";
import type { NumberedFinding, Sheet } from "../view/sheet.ts";
import { severityWords } from "../view/words.ts";

/** What was found is added to a finding without figures only up to this length; longer lists wait in the full report. */
const shortFound = 60;

/** The title without the name of the part or stage under which it is printed. */
function bareTitle(title: string, subject: string): string {
  for (const lead of [`${subject}: `, `${subject} `]) if (subject && title.startsWith(lead)) return title.slice(lead.length);
  return title;
}

function findingText({ number, finding }: NumberedFinding, subject: string, bare: boolean): string {
  const title = findingHeading({ ...finding, title: bareTitle(finding.title, subject) });
  const figure = keyFigure(finding) || (finding.severity === "unmeasured" && finding.found.length <= shortFound ? finding.found : "");
  const lead = bare ? `(${number})` : `${severityWords[finding.severity]} (${number})`;
  return `${lead} ${title}${figure ? `: ${figure}` : ""}.`;
}

/**
 * Findings of one part or stage as running text, worst first, each with its number, title and most telling figure. Dangers
 * are named by number only: their figures stand in the section on dangers. `bare` leaves the severity to the caller.
 */
export function findingsText(findings: readonly NumberedFinding[], subject: string, sheet: Sheet, { bare = false } = {}): string {
  const isDanger = ({ number }: NumberedFinding): boolean => sheet.dangers.some((danger) => danger.number === number);
  const dangers = findings.filter(isDanger).map(({ number }) => number);
  const others = findings.filter((numbered) => !isDanger(numbered)).map((numbered) => findingText(numbered, subject, bare));
  return [...(dangers.length > 0 ? [`See danger ${dangers.join(", ")}.`] : []), ...others].join(" ");
}
