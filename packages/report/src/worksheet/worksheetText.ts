import type { Worksheet } from "@underchassis/grading";
import { cleaned } from "../clean/cleanReport.ts";
import { textTable } from "../text/textTable.ts";
import { hang } from "../text/wrapText.ts";
import { type StageView, worksheetView } from "./worksheetView.ts";

const heading = (title: string): string[] => ["", title.toUpperCase(), "-".repeat(Math.min(60, title.length))];

function stageLines(stage: StageView, width: number): string[] {
  return [
    ...heading(stage.title),
    ...stage.cautions.flatMap(({ title, text }) => hang("  ! ", `${title}. ${text}`, width)),
    ...(stage.lead === "" ? [] : ["", ...hang("", stage.lead, width)]),
    ...(stage.parts.rows.length === 0
      ? []
      : ["", "Parts, cold and discharged", ...textTable(stage.parts, width), ...hang("How: ", stage.methods.join(". "), width)]),
    ...stage.readings.flatMap(({ title, table }) => ["", title, ...textTable(table, width)]),
  ];
}

/** A bench sheet as plain text, cautions first, cold before hot. */
export function renderWorksheetText(sheet: Worksheet, width = 120): string {
  const view = worksheetView(cleaned(sheet) as Worksheet);
  const lines = [
    ...hang("", `Bench sheet: ${view.title}`, width),
    ...view.facts.flatMap(([label, text]) => hang(`  ${label}: `, text, width)),
    ...heading("Cautions"),
    ...view.cautions.flatMap(({ title, text }) => hang("  ! ", `${title}. ${text}`, width)),
    ...heading("Order of work"),
    ...view.order.flatMap((step, index) => hang(`  ${index + 1}. `, step, width)),
    ...view.stages.flatMap((stage) => stageLines(stage, width)),
    "",
    ...hang("", view.notes, width),
  ];
  return `${lines.join("\n").replaceAll("\u00a0", " ")}\n`;
}
