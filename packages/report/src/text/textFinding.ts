import { figureParts, figureSentence } from "../view/figureParts.ts";
import { findingHeading } from "../view/findingHeading.ts";
import { findingPairs, findingParagraph } from "../view/findingPairs.ts";
import type { NumberedFinding, Sheet } from "../view/sheet.ts";
import { severityWords } from "../view/words.ts";
import type { Paint } from "./paint.ts";
import { hang } from "./wrapText.ts";

export interface TextContext {
  sheet: Sheet;
  width: number;
  paint: Paint;
}

/** A labelled line under a finding or a step; nothing when there is nothing to say. */
export const labelled = (label: string, text: string | undefined, width: number): string[] =>
  text ? hang(`    ${label}: `, text, width) : [];

/** First line of a finding: number, severity in words, title; the severity painted. */
export function findingTitle({ number, finding }: NumberedFinding, { width, paint }: TextContext): string[] {
  const word = severityWords[finding.severity];
  const lead = `  ${number}. ${word}: `;
  const lines = hang(lead, findingHeading(finding), width);
  const first = lines[0] ?? "";
  return [first.replace(word, paint.severity[finding.severity](word)), ...lines.slice(1)];
}

/** A finding with everything behind it: figures with window, limit, margin, method and source. */
export function textFinding(numbered: NumberedFinding, context: TextContext): string[] {
  const { finding } = numbered;
  const { sheet, width } = context;
  const figures = finding.figures.flatMap((figure) => {
    const parts = figureParts(figure);
    return [
      ...hang(`    - ${parts.label}: `, figureSentence(parts), width),
      ...hang("      ", `${parts.how}; ${sheet.source(parts.source).text}`, width),
    ];
  });
  const words =
    finding.severity === "good"
      ? hang("    ", findingParagraph(finding, sheet), width)
      : findingPairs(finding, sheet).flatMap(([label, text]) => labelled(label, text, width));
  return [...findingTitle(numbered, context), ...words, ...figures];
}
