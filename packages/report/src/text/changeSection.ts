import { emptyWords } from "../view/emptyWords.ts";
import { digitsToTell, formatValue } from "../view/formatValue.ts";
import { changeSentence } from "../view/tables.ts";
import { tellingEffects } from "../view/tellingEffects.ts";
import { outdented, type TextContext } from "./textContext.ts";
import { hang } from "./wrapText.ts";

/** Effects of a change that are printed. */
const most = 2;

/** An entry for each change: what was done, and its most telling effects. */
export function changeLines({ sheet, width }: TextContext): string[] {
  const { changes } = sheet.report;
  if (changes.length === 0) return hang("  ", emptyWords.changes, width);
  return changes.flatMap((change) => {
    const effects = tellingEffects(change.effects, most).map(({ label, unit, before, after, condition }) => {
      const digits = digitsToTell([before, after], unit);
      return `${label} ${formatValue(before, unit, digits)} -> ${formatValue(after, unit, digits)} (${condition})`;
    });
    return outdented([changeSentence(change), ...effects].join("; "), width);
  });
}
