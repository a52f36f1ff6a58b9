import { becauseText } from "../view/becauseText.ts";
import { emptyWords } from "../view/emptyWords.ts";
import { readingParts } from "../view/readingParts.ts";
import type { SectionKey } from "../view/sectionTitles.ts";
import { settingWords } from "../view/settingWords.ts";
import type { Sheet } from "../view/sheet.ts";
import {
  changeSentence,
  checkTable,
  effectTable,
  expectedTable,
  orderTable,
  partTable,
  readingRemark,
  readingTable,
  sourceTable,
  warningSentence,
} from "../view/tables.ts";
import { levelWords, whenWord } from "../view/words.ts";
import { escapeMarkdown } from "./escapeMarkdown.ts";
import { labelledText, listBlock, nested, tableBlock } from "./markdownBlocks.ts";
import { findingHead, markdownFinding } from "./markdownFinding.ts";
import { markdownSuspects } from "./markdownSuspects.ts";

/** Blocks of each section, in Markdown; every renderer's order of sections is that of `sectionTitles`. */
export const markdownSections: Readonly<Record<SectionKey, (sheet: Sheet) => readonly string[]>> = {
  cautions: ({ report }) => [
    listBlock(
      report.cautions.map(
        (caution) =>
          `**${escapeMarkdown(caution.title)}** ${escapeMarkdown(caution.text)}${caution.because.length > 0 ? ` (because of ${escapeMarkdown(becauseText(caution.because))})` : ""}`,
      ),
      "",
    ),
  ],
  clearance: (sheet) => {
    const { level, meaning, holds, notMade, steps } = sheet.report.clearance;
    const held = holds.map((hold) => {
      const numbered = sheet.findingAt(hold.finding);
      return `**${levelWords[hold.step]}:** ${escapeMarkdown(hold.reason)}${numbered ? ` (finding ${numbered.number})` : ""}`;
    });
    return [
      `Reached: **${levelWords[level]}**. ${escapeMarkdown(meaning)}`,
      listBlock(
        steps.map((step) => `[${step.reached ? "x" : " "}] ${levelWords[step.level]}: ${escapeMarkdown(step.text)}`),
        "",
      ),
      holds.length > 0 ? "Held back by, in the order to clear it:" : emptyWords.holds,
      listBlock(held, "", true),
      notMade.length > 0 ? "Could not be checked:" : "",
      listBlock(notMade.map(escapeMarkdown), ""),
    ];
  },
  dangers: ({ dangers }) => [
    listBlock(
      dangers.map(
        (numbered) =>
          findingHead(numbered) +
          nested([
            labelledText("found", numbered.finding.found),
            labelledText("should be", numbered.finding.shouldBe),
            labelledText("do", numbered.finding.action),
          ]),
      ),
      emptyWords.dangers,
    ),
  ],
  next: (sheet) => [
    listBlock(
      sheet.report.next.map(
        ({ action, why, expect, cautions, step }) =>
          `${escapeMarkdown(action)}${step ? ` (${whenWord(step, sheet.report.clearance.level)})` : ""}` +
          nested(
            [
              labelledText("why", why),
              labelledText("expect", expect),
              labelledText("caution", cautions.map(sheet.cautionTitle).join("; ")),
            ],
            4,
          ),
      ),
      emptyWords.next,
      true,
    ),
  ],
  stages: (sheet) => {
    const blocks = sheet.report.stages.flatMap((stage) => [
      `### ${escapeMarkdown(stage.template ? `${stage.title} (${stage.id}, template ${stage.template})` : `${stage.title} (${stage.id})`)}`,
      escapeMarkdown(stage.summary ?? ""),
      escapeMarkdown(settingWords(stage.settings)),
      tableBlock(partTable(stage.parts), emptyWords.parts),
      listBlock(
        sheet.findingsAt(stage.findings).map((numbered) => markdownFinding(numbered, sheet)),
        emptyWords.findings,
      ),
    ]);
    if (sheet.report.stages.length === 0) blocks.push(emptyWords.stages);
    if (sheet.loose.length > 0)
      blocks.push(
        "### The chassis as a whole",
        listBlock(
          sheet.loose.map((numbered) => markdownFinding(numbered, sheet)),
          "",
        ),
      );
    return blocks;
  },
  suspects: (sheet) => markdownSuspects(sheet),
  readings: ({ report }) => {
    const remarks = report.readings.flatMap((reading) => {
      const remark = readingRemark(reading);
      return remark ? escapeMarkdown(`${readingParts(reading).place}: ${remark}`) : [];
    });
    return [tableBlock(readingTable(report.readings), emptyWords.readings), listBlock(remarks, "")];
  },
  expected: (sheet) => [tableBlock(expectedTable(sheet), emptyWords.expected)],
  changes: (sheet) => {
    const { changes } = sheet.report;
    if (changes.length === 0) return [emptyWords.changes];
    return changes.flatMap((change) => [
      escapeMarkdown(changeSentence(change)),
      labelledText("why", change.why) ?? "",
      tableBlock(effectTable(change, sheet), emptyWords.effects),
    ]);
  },
  // A box to tick exists in lists only, not in tables.
  order: (sheet) => [
    listBlock(
      orderTable(sheet).rows.map(([quantity, what, parts, why]) => `[ ] ${escapeMarkdown(`${quantity} x ${what} for ${parts}: ${why}`)}`),
      emptyWords.order,
    ),
  ],
  checks: (sheet) => [
    "Made:",
    tableBlock(checkTable(sheet.checksMade), emptyWords.checksMade),
    "Not made:",
    tableBlock(checkTable(sheet.checksNotMade), emptyWords.checksNotMade),
  ],
  remarks: ({ report }) => [
    listBlock(
      report.warnings.map((warning) => escapeMarkdown(warningSentence(warning))),
      "",
    ),
  ],
  sources: (sheet) => [tableBlock(sourceTable(sheet), emptyWords.sources)],
};
