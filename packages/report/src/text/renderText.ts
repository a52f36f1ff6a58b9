import type { Report } from "@underchassis/dataset";
import { cleanReport } from "../clean/cleanReport.ts";
import { headFacts } from "../view/headFacts.ts";
import { sectionTitles } from "../view/sectionTitles.ts";
import { sheetOf } from "../view/sheet.ts";
import { changeLines, checkLines, expectedLines, orderLines, readingLines, remarkLines, sourceLines } from "./closingSections.ts";
import { cautionTexts, cautionTitles, clearanceLines, dangerLines, nextLines, stepLines } from "./openingSections.ts";
import { paintOf } from "./paint.ts";
import { stageLines } from "./stageSections.ts";
import type { TextContext } from "./textFinding.ts";
import { hang } from "./wrapText.ts";

export interface TextOptions {
  /** True for terminal colours; severity is said in words either way. */
  colour: boolean;
  /** Columns, 40 to 200; default 96. */
  width?: number;
}

/** Facts that stand at the very top; the others wait near the end, so that the next work fits the first screen. */
const firstScreen = new Set(["Job file", "Line", "Findings"]);

/**
 * The report as plain text for a terminal: cautions, dangers, clearance and the next work first. Lines hold at most
 * `width` columns as far as the tables' narrowest columns allow. Control characters of the job never reach the terminal.
 */
export function renderText(report: Report, options: TextOptions): string {
  const width = Math.min(200, Math.max(40, Math.round(options.width ?? 96)));
  const sheet = sheetOf(cleanReport(report));
  const paint = paintOf(options.colour);
  const context: TextContext = { sheet, width, paint };
  const section = (title: string, lines: readonly string[]): string[] => ["", paint.title(title.toUpperCase()), ...lines];
  const facts = headFacts(sheet.report);
  const factLines = ([label, text]: readonly [string, string]): string[] => hang(`  ${label}: `, text, width);
  const lines = [
    ...hang("", sheet.report.job.title, width).map(paint.title),
    ...facts.filter(([label]) => firstScreen.has(label)).flatMap(factLines),
    ...section(`${sectionTitles.cautions} (in full near the end)`, cautionTitles(context)),
    ...section(sectionTitles.dangers, dangerLines(context)),
    ...section(sectionTitles.clearance, clearanceLines(context)),
    ...section(sectionTitles.next, nextLines(context)),
    ...section(sectionTitles.stages, stageLines(context)),
    ...section(sectionTitles.readings, readingLines(context)),
    ...section(sectionTitles.expected, expectedLines(context)),
    ...section(sectionTitles.changes, changeLines(context)),
    ...section(sectionTitles.order, orderLines(context)),
    ...section(sectionTitles.checks, checkLines(context)),
    ...(sheet.report.warnings.length > 0 ? section(sectionTitles.remarks, remarkLines(context)) : []),
    ...section("Cautions in full", cautionTexts(context)),
    ...section("Steps of bringing it up", stepLines(context)),
    ...section("About this sheet", facts.filter(([label]) => !firstScreen.has(label)).flatMap(factLines)),
    ...section(sectionTitles.sources, sourceLines(context)),
  ];
  return `${lines.join("\n").replaceAll("\u00a0", " ")}\n`;
}
