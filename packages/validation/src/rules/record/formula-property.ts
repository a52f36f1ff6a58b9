import type { StageTemplate } from "@underchassis/dataset";
import { oneOf } from "@underchassis/source-text";
import type { Complaint, RecordRule } from "../../model/rule.ts";
import type { FormulaNameParts } from "../../model/subjects.ts";
import { PROPERTIES } from "../../shared/formulaProperties.ts";
import { placesOfName } from "../../shared/formulaSpans.ts";
import { formulasIn } from "../../shared/formulasIn.ts";

/** Whether a name asks its part for what its kind has, or is another rule's matter. */
function isOffered({ role = "", property = "" }: FormulaNameParts, kinds: ReadonlyMap<string, string>): boolean {
  const kind = kinds.get(role);
  const having = Object.hasOwn(PROPERTIES, property) ? PROPERTIES[property] : undefined;
  return kind === undefined || having === undefined || having.includes(kind);
}

/** A part is asked only for what its kind has. */
export const formulaProperty: RecordRule = {
  code: "UC-404",
  name: "formula-property",
  scope: "record",
  severity: "error",
  title: "A formula asks a part only for what its kind has",
  why: "Ohms of a capacitor are no value, and the requirement stays unjudged.",
  bad: '"formula": "reservoir.ohms > 10"',
  good: '"formula": "reservoir.farads > 10e-6"',
  kinds: ["stage"],
  check(record) {
    const kinds = new Map<string, string>();
    for (const { role, kind } of (record.value as StageTemplate).parts) kinds.set(role, kind);
    const formulas = formulasIn(record);
    if (formulas.every(({ parsed }) => !parsed.ok || parsed.names.every((name) => isOffered(name, kinds)))) return [];
    return formulas.flatMap(({ text, path, parsed }) =>
      parsed.ok
        ? parsed.names.flatMap(({ name, role = "", property = "" }): Complaint[] => {
            const kind = kinds.get(role);
            const having = Object.hasOwn(PROPERTIES, property) ? PROPERTIES[property] : undefined;
            if (kind === undefined || having === undefined || having.includes(kind)) return [];
            const offered = Object.keys(PROPERTIES).filter((other) => PROPERTIES[other]?.includes(kind) ?? true);
            return placesOfName(text, name).map(({ offset }) => ({
              at: { path, within: { offset: offset + role.length + 1, length: property.length } },
              message: `"${role}" is a ${kind}, which has no "${property}"`,
              received: name,
              expected: oneOf(offered, 30),
            }));
          })
        : [],
    );
  },
};
