import type { FormulaError } from "@underchassis/calc/expression";
import type { RecordRule } from "../../model/rule.ts";
import type { Stretch } from "../../shared/formulaSpans.ts";
import { formulasIn } from "../../shared/formulasIn.ts";

/** Every formula is in the expression language. */
export const formulaSyntax: RecordRule = {
  code: "UC-401",
  name: "formula-syntax",
  scope: "record",
  severity: "error",
  title: "Formulas are in the expression language",
  why: "Only what the language allows is ever worked out.",
  bad: '"formula": "reservoir.farads > 1e-6 ? 1 : 0"',
  good: '"formula": "reservoir.farads > 1e-6"',
  kinds: ["stage", "rule-of-thumb"],
  check: (record) =>
    formulasIn(record).flatMap(({ text, path, parsed }) =>
      parsed.ok
        ? []
        : [
            {
              at: { path, within: placeOf(text, parsed.error) },
              message: parsed.error.message.replace(/ \(char \d+\)$/, ""),
              received: parsed.error.received,
              expected:
                'numbers, + - * / ^, comparisons, and or not, role.property, volts("point"), ripple("point"), abs min max sqrt exp log log10 pow',
            },
          ],
    ),
};

/** Where the parser stopped, or the piece that is refused, if it stands there as written; else the whole formula. */
function placeOf(text: string, { message, received }: FormulaError): Stretch {
  const stopped = /\(char (\d+)\)$/.exec(message);
  if (stopped !== null) {
    const offset = Math.min(Number(stopped[1]) - 1, Math.max(0, text.length - 1));
    return { offset, length: 1 };
  }
  const plain = text.indexOf(received);
  if (plain >= 0 && received !== "") return { offset: plain, length: received.length };
  return { offset: 0, length: text.length };
}
