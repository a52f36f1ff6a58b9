import { headFacts } from "../view/headFacts.ts";
import type { TextContext } from "./textContext.ts";
import { hang } from "./wrapText.ts";

const shown = new Set(["Line", "Findings", "Graded with"]);

/** Title, line voltage, how many findings of each kind, and the versions that it was graded with. */
export function headLines({ sheet, width, paint }: TextContext): string[] {
  const facts = headFacts(sheet.report).filter(([label]) => shown.has(label));
  return [
    ...hang("", sheet.report.job.title, width).map(paint.title),
    ...facts.flatMap(([label, text]) => hang(`  ${label}: `, text, width)),
  ];
}

/** Titles of the cautions that apply. */
export function cautionLines({ sheet, width }: TextContext): string[] {
  return hang("  ! ", sheet.report.cautions.map((caution) => caution.title).join("; "), width);
}
