import { figureParts, figureSentence } from "../view/figureParts.ts";
import { findingHeading } from "../view/findingHeading.ts";
import { findingPairs, findingParagraph } from "../view/findingPairs.ts";
import type { NumberedFinding, Sheet } from "../view/sheet.ts";
import { severityWords } from "../view/words.ts";
import { escapeMarkdown } from "./escapeMarkdown.ts";
import { labelledText, nested } from "./markdownBlocks.ts";

/** "**1. danger:** title". */
export function findingHead({ number, finding }: NumberedFinding): string {
  return `**${number}. ${severityWords[finding.severity]}:** ${escapeMarkdown(findingHeading(finding))}`;
}

/** A finding as a list entry with everything behind it. */
export function markdownFinding(numbered: NumberedFinding, sheet: Sheet): string {
  const { finding } = numbered;
  const figures = finding.figures.map((figure) => {
    const parts = figureParts(figure);
    return escapeMarkdown(`${parts.label}: ${figureSentence(parts)}; ${parts.how}; ${sheet.source(parts.source).text}`);
  });
  const words =
    finding.severity === "good"
      ? [escapeMarkdown(findingParagraph(finding, sheet))]
      : findingPairs(finding, sheet).map(([label, text]) => labelledText(label, text));
  return findingHead(numbered) + nested([...words, ...figures]);
}
