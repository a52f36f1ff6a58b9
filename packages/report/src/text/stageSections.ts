import { emptyWords } from "../view/emptyWords.ts";
import type { NumberedFinding } from "../view/sheet.ts";
import { partTable } from "../view/tables.ts";
import { type TextContext, textFinding } from "./textFinding.ts";
import { textTable } from "./textTable.ts";
import { hang } from "./wrapText.ts";

function findingBlocks(findings: readonly NumberedFinding[], context: TextContext): string[] {
  return findings.flatMap((finding) => textFinding(finding, context));
}

/** Each stage: summary, parts with their three lives, findings; then the findings that belong to no stage. */
export function stageLines(context: TextContext): string[] {
  const { sheet, width, paint } = context;
  const { stages } = sheet.report;
  const blocks = stages.map((stage) => {
    const findings = sheet.findingsAt(stage.findings);
    return [
      ...hang("", stage.template ? `${stage.title} (${stage.id}, template ${stage.template})` : `${stage.title} (${stage.id})`, width).map(
        paint.title,
      ),
      ...(stage.summary ? hang("  ", stage.summary, width) : []),
      ...(stage.parts.length > 0
        ? textTable(partTable(stage.parts), width - 2).map((line) => `  ${line}`)
        : hang("  ", emptyWords.parts, width)),
      ...(findings.length > 0 ? findingBlocks(findings, context) : hang("  ", emptyWords.findings, width)),
    ];
  });
  if (stages.length === 0) blocks.push(hang("  ", emptyWords.stages, width));
  if (sheet.loose.length > 0) blocks.push([paint.title("The chassis as a whole"), ...findingBlocks(sheet.loose, context)]);
  return blocks.flatMap((block, index) => (index === 0 ? block : ["", ...block]));
}
