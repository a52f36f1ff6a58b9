import { emptyWords } from "../view/emptyWords.ts";
import { levelWords, whenWord } from "../view/words.ts";
import { findingTitle, labelled, type TextContext } from "./textFinding.ts";
import { hang } from "./wrapText.ts";

/** Titles of the cautions that apply; their text stands near the end of the sheet. */
export function cautionTitles({ sheet, width }: TextContext): string[] {
  return hang("  ! ", sheet.report.cautions.map((caution) => caution.title).join("; "), width);
}

/** The cautions in full, with what calls for each. */
export function cautionTexts({ sheet, width }: TextContext): string[] {
  return sheet.report.cautions.flatMap(({ title, text, because }) => [
    ...hang("  ! ", title, width),
    ...hang("    ", text, width),
    ...labelled("because of", because.join(", "), width),
  ]);
}

/** The step that is reached, what holds back the next ones in the order to clear it, what could not be checked. */
export function clearanceLines({ sheet, width, paint }: TextContext): string[] {
  const { level, meaning, holds, notMade, steps } = sheet.report.clearance;
  const reached = hang("  Reached: ", `${levelWords[level]}. ${meaning}`, width);
  return [
    ...reached.map((line, index) => (index === 0 ? line.replace(levelWords[level], paint.title) : line)),
    ...hang(
      "  ",
      steps.map((step) => `${step.reached ? "[x]" : "[ ]"} ${levelWords[step.level]}`.replaceAll(" ", "\u00a0")).join("\u00a0\u00a0 "),
      width,
    ),
    ...(holds.length === 0 ? hang("  ", emptyWords.holds, width) : ["  Held back by, in the order to clear it:"]),
    ...holds.flatMap((hold, index) => {
      const numbered = sheet.findingAt(hold.finding);
      const reference = numbered ? ` (finding ${numbered.number})` : "";
      return hang(`  ${String(index + 1).padStart(2)}. ${levelWords[hold.step]}: `, `${hold.reason}${reference}`, width);
    }),
    ...(notMade.length > 0 ? hang("  ", `${notMade.length} that could not be checked: see Checks, not made.`, width) : []),
  ];
}

/** What each step means; the clearance itself names the steps only, so that the next work fits the first screen. */
export function stepLines({ sheet, width }: TextContext): string[] {
  return sheet.report.clearance.steps.flatMap((step) => hang(`  ${levelWords[step.level]}: `, step.text, width));
}

/** Dangers in short; the figures behind each stand with its stage. */
export function dangerLines(context: TextContext): string[] {
  const { sheet, width } = context;
  if (sheet.dangers.length === 0) return hang("  ", emptyWords.dangers, width);
  return sheet.dangers.flatMap((numbered) => [
    ...findingTitle(numbered, context),
    ...labelled("found", `${numbered.finding.found}; should be: ${numbered.finding.shouldBe}`, width),
    ...labelled("do", numbered.finding.action, width),
  ]);
}

/** What to do at the bench, in order. */
export function nextLines({ sheet, width }: TextContext): string[] {
  if (sheet.report.next.length === 0) return hang("  ", emptyWords.next, width);
  return sheet.report.next.flatMap(({ action, why, expect, cautions, step }, index) => [
    ...hang(`  ${index + 1}. `, step ? `${action} (${whenWord(step, sheet.report.clearance.level)})` : action, width),
    ...labelled("why", why, width),
    ...labelled("expect", expect, width),
    ...labelled("caution", cautions.map(sheet.cautionTitle).join("; "), width),
  ]);
}
