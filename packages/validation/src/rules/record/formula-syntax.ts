import type { RecordRule } from "../../model/rule.ts";
import type { Stretch } from "../../shared/formulaSpans.ts";
import { formulasIn } from "../../shared/formulasIn.ts";
import { gather, nothing } from "../../shared/gather.ts";

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
    gather(formulasIn(record), ({ text, path, parsed }) =>
      parsed.ok
        ? nothing()
        : [
            {
              at: { path, within: pointable(text, parsed.error.at) },
              message: parsed.error.message.replace(/ \(char \d+\)$/, ""),
              received: parsed.error.received,
              expected:
                'numbers, + - * / ^, comparisons, and or not, role.property, volts("point"), ripple("point"), abs min max sqrt exp log log10 pow',
            },
          ],
    ),
};

/** At least one character, where the text has one there. */
function pointable(text: string, { offset, length }: Stretch): Stretch {
  const start = Math.max(0, Math.min(offset, text.length - 1));
  return { offset: start, length: Math.min(Math.max(1, length), text.length - start) };
}
