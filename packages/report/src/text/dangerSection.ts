import type { ReportFinding } from "@underchassis/dataset";
import { emptyWords } from "../view/emptyWords.ts";
import { findingHeading } from "../view/findingHeading.ts";
import { shortFigure, tellingFigures } from "../view/keyFigure.ts";
import type { NumberedFinding, Sheet } from "../view/sheet.ts";
import { severityWords } from "../view/words.ts";
import type { TextContext } from "./textContext.ts";
import { hang } from "./wrapText.ts";

/** What was found against its limits: figures where there are any, else in words. */
function foundText(finding: ReportFinding, { isFromMemory }: Sheet): string {
  const figures = tellingFigures(finding).map((figure) => shortFigure(figure, finding.found, isFromMemory));
  const words = figures.length > 0 ? figures.join("; ") : `should be: ${finding.shouldBe}`;
  return `${finding.found}; ${words}`;
}

function dangerTitle({ number, finding }: NumberedFinding, { width, paint }: TextContext): string[] {
  const word = severityWords[finding.severity];
  const [first = "", ...others] = hang(`  ${number}. ${word}: `, findingHeading(finding), width);
  return [first.replace(word, paint.severity[finding.severity](word)), ...others];
}

/** Each danger with its figures and what to do; the reasons stand in the full report. */
export function dangerLines(context: TextContext): string[] {
  const { sheet, width } = context;
  if (sheet.dangers.length === 0) return hang("  ", emptyWords.dangers, width);
  return sheet.dangers.flatMap((numbered) => [
    ...dangerTitle(numbered, context),
    ...hang("    ", `found: ${foundText(numbered.finding, sheet)}`, width),
    ...hang("    ", `do: ${numbered.finding.action}`, width),
  ]);
}
