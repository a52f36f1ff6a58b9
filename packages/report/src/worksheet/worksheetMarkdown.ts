import type { Worksheet } from "@underchassis/grading";
import { cleaned } from "../clean/cleanReport.ts";
import { escapeMarkdown } from "../markdown/escapeMarkdown.ts";
import { labelledText, listBlock, tableBlock } from "../markdown/markdownBlocks.ts";
import { worksheetView } from "./worksheetView.ts";

const cautionList = (cautions: readonly { title: string; text: string }[]): string =>
  listBlock(
    cautions.map(({ title, text }) => `**${escapeMarkdown(title)}** ${escapeMarkdown(text)}`),
    "",
  );

/** A bench sheet as GitHub-flavoured Markdown. */
export function renderWorksheetMarkdown(sheet: Worksheet): string {
  const view = worksheetView(cleaned(sheet) as Worksheet);
  const blocks = [
    `# Bench sheet: ${escapeMarkdown(view.title)}`,
    listBlock(
      view.facts.map(([label, text]) => labelledText(label, text) ?? ""),
      "",
    ),
    "## Cautions",
    cautionList(view.cautions),
    "## Order of work",
    listBlock(view.order.map(escapeMarkdown), "", true),
    ...view.stages.flatMap((stage) => [
      `## ${escapeMarkdown(stage.title)}`,
      cautionList(stage.cautions),
      escapeMarkdown(stage.lead),
      ...(stage.parts.rows.length === 0
        ? []
        : ["### Parts, cold and discharged", tableBlock(stage.parts, ""), listBlock(stage.methods.map(escapeMarkdown), "")]),
      ...stage.readings.flatMap(({ title, table }) => [`### ${escapeMarkdown(title)}`, tableBlock(table, "")]),
    ]),
    escapeMarkdown(view.notes),
  ];
  return `${blocks.filter(Boolean).join("\n\n").replaceAll("\u00a0", " ")}\n`;
}
