import type { Report } from "@underchassis/dataset";
import { emptyWords } from "../view/emptyWords.ts";
import { digitsToTell, formatValue } from "../view/formatValue.ts";
import { tellingEffects } from "../view/tellingEffects.ts";
import { changeWords } from "../view/words.ts";
import { outdented, type TextContext } from "./textContext.ts";
import { hang } from "./wrapText.ts";

/** Effects of a change that are printed. */
const most = 2;

type Change = Report["changes"][number];

/** What was done, or will be, to which part; its title stands with its stage. */
function changeText({ part, what, from, to, planned }: Change): string {
  const steps = from && to ? `${from} -> ${to}` : from || to;
  const done = planned ? `to be ${changeWords[what]}` : changeWords[what];
  return `${part} ${done}${steps ? `: ${steps}` : ""}`;
}

/** An entry for each change: what was done, and its most telling effects. */
export function changeLines({ sheet, width }: TextContext): string[] {
  const { changes } = sheet.report;
  if (changes.length === 0) return hang("  ", emptyWords.changes, width);
  const marked = new Map(sheet.report.stages.flatMap(({ parts }) => parts.map((part) => [part.name, part.marked] as const)));
  return changes.flatMap((change) => {
    // What was measured on the old part stands with its stage.
    const old = marked.get(change.part);
    const from = old && change.from.startsWith(`${old}, `) ? old : change.from;
    const effects = tellingEffects(change.effects, most).map(({ label, unit, before, after, condition }) => {
      const digits = digitsToTell([before, after], unit);
      return `${label} ${formatValue(before, unit, digits)} -> ${formatValue(after, unit, digits)} (${condition})`;
    });
    return outdented([changeText({ ...change, from }), ...effects].join("; "), width);
  });
}
