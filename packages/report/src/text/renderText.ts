import type { Report } from "@underchassis/dataset";
import { cleanReport } from "../clean/cleanReport.ts";
import { sectionTitles } from "../view/sectionTitles.ts";
import { sheetOf } from "../view/sheet.ts";
import { changeLines } from "./changeSection.ts";
import { checkLines, remarkLines } from "./checkSection.ts";
import { clearanceLines } from "./clearanceSection.ts";
import { dangerLines } from "./dangerSection.ts";
import { expectedLines } from "./expectedSection.ts";
import { cautionLines, headLines } from "./headSection.ts";
import { nextLines } from "./nextSection.ts";
import { orderLines } from "./orderSection.ts";
import { paintOf } from "./paint.ts";
import { readingLines } from "./readingSection.ts";
import { stageLines } from "./stageSection.ts";
import { suspectLines } from "./suspectSection.ts";
import type { TextContext } from "./textContext.ts";
import { hang } from "./wrapText.ts";

export interface TextOptions {
  /** True for terminal colours; severity is said in words either way. */
  colour: boolean;
  /** Columns, 40 to 200; default 96. */
  width?: number;
}

const fullReport = "Reasons, methods, sources and all checks: underchassis grade JOB --out report.html (or .md, .json).";

/**
 * A summary of the report for a terminal: what is dangerous, what holds the next step and what to do first, then each part and
 * reading in short. The renderers for HTML, Markdown and JSON carry everything. Lines hold at most `width` columns as far as the
 * tables' narrowest columns allow. Control characters of the job never reach the terminal.
 */
export function renderText(report: Report, options: TextOptions): string {
  const width = Math.min(200, Math.max(40, Math.round(options.width ?? 96)));
  const sheet = sheetOf(cleanReport(report));
  const paint = paintOf(options.colour);
  const context: TextContext = { sheet, width, paint };
  const section = (title: string, lines: readonly string[]): string[] => ["", paint.title(title.toUpperCase()), ...lines];
  const lines = [
    ...headLines(context),
    ...section(sectionTitles.cautions, cautionLines(context)),
    ...section(sectionTitles.dangers, dangerLines(context)),
    ...section(sectionTitles.clearance, clearanceLines(context)),
    ...section(sectionTitles.next, nextLines(context)),
    ...section(sectionTitles.stages, stageLines(context)),
    ...section(sectionTitles.readings, readingLines(context)),
    ...(sheet.report.suspects === undefined ? [] : section(sectionTitles.suspects, suspectLines(context, sheet.report.suspects))),
    ...section(sectionTitles.expected, expectedLines(context)),
    ...section(sectionTitles.changes, changeLines(context)),
    ...section(sectionTitles.order, orderLines(context)),
    ...section(sectionTitles.checks, checkLines(context)),
    ...(sheet.report.warnings.length > 0 ? section(sectionTitles.remarks, remarkLines(context)) : []),
    "",
    ...hang("", fullReport, width),
  ];
  return `${lines.join("\n").replaceAll("\u00a0", " ")}\n`;
}
