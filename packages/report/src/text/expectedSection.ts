import type { Report } from "@underchassis/dataset";
import { emptyWords } from "../view/emptyWords.ts";
import { digitsToTell } from "../view/formatValue.ts";
import { commonReturn, shortCircumstance, shortValue, shortWindow } from "../view/shortWords.ts";
import { type Level, quantityUnit } from "../view/words.ts";
import type { TextContext } from "./textContext.ts";
import { textTable } from "./textTable.ts";
import { hang } from "./wrapText.ts";

type Expected = Report["expected"][number];

/** In which condition the chassis is measured next, by the step that is reached; the first that was computed counts. */
const nextConditions: Readonly<Record<Level, readonly string[]>> = {
  none: ["tubes-out", "standby", "operating"],
  "current-limited": ["tubes-out", "standby", "operating"],
  // A chassis without a standby switch may list its operating voltages once, as standby.
  "full-line": ["operating", "standby"],
  service: ["operating", "standby"],
};

function row(line: Expected, common: string, condition: string | undefined): string[] {
  const unit = quantityUnit(line.quantity);
  const digits = digitsToTell([line.low, line.high, line.measured], unit);
  return [
    line.to === common ? line.point : `${line.point} to ${line.to}`,
    condition === undefined ? shortCircumstance(line.condition, line.quantity) : "",
    shortValue(line.nominal, unit, digits),
    shortWindow(line.low, line.high, unit, digits),
    shortValue(line.ripple, unit, 3),
    shortValue(line.measured, unit, digits),
  ];
}

/** What to expect in the condition that is measured next; points that carry the same share a row. */
export function expectedLines({ sheet, width }: TextContext): string[] {
  const { expected, clearance } = sheet.report;
  if (expected.length === 0) return hang("  ", emptyWords.expected, width);
  const condition = nextConditions[clearance.level].find((name) => expected.some((line) => line.condition === name));
  const lines = condition === undefined ? expected : expected.filter((line) => line.condition === condition);
  const common = commonReturn(lines);
  const merged = new Map<string, string[]>();
  for (const line of lines) {
    const [point = "", ...others] = row(line, common, condition);
    const key = others.join("\n");
    const known = merged.get(key);
    if (known) known[0] = `${known[0]}, ${point}`;
    else merged.set(key, [point, ...others]);
  }
  const head = ["point", "condition", "expected", "window", "ripple", "measured"];
  const left = expected.length - lines.length;
  return [
    ...hang(
      "  ",
      `${condition ? `In the condition "${condition}", to` : "To"} ${common} where nothing else is said, on today's full line.`,
      width,
    ),
    ...textTable({ head, rows: [...merged.values()] }, width - 2).map((line) => `  ${line}`),
    ...(left > 0 ? hang("  ", `${left} in other conditions: see the full report.`, width) : []),
  ];
}
