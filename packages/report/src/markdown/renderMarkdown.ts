import type { Report } from "@underchassis/dataset";
import { cleanReport } from "../clean/cleanReport.ts";
import { headFacts } from "../view/headFacts.ts";
import { type SectionKey, sectionTitles } from "../view/sectionTitles.ts";
import { sheetOf } from "../view/sheet.ts";
import { escapeMarkdown } from "./escapeMarkdown.ts";
import { labelledText, listBlock } from "./markdownBlocks.ts";
import { markdownSections } from "./markdownSections.ts";

/** The report as GitHub-flavoured Markdown. Text from the job shows as it was written and can neither format, link nor notify. */
export function renderMarkdown(report: Report): string {
  const sheet = sheetOf(cleanReport(report));
  const facts = headFacts(sheet.report).map(([label, text]) => labelledText(label, text) ?? "");
  const blocks = [`# ${escapeMarkdown(sheet.report.job.title)}`, listBlock(facts, "")];
  for (const key of Object.keys(sectionTitles) as SectionKey[]) {
    if ((key === "remarks" && sheet.report.warnings.length === 0) || (key === "suspects" && sheet.report.suspects === undefined)) continue;
    blocks.push(`## ${sectionTitles[key]}`, ...markdownSections[key](sheet));
  }
  return `${blocks.filter(Boolean).join("\n\n").replaceAll("\u00a0", " ")}\n`;
}
