import type { RuleOfThumb, StageTemplate } from "@underchassis/dataset";
import { nearestOf, oneOf } from "@underchassis/source-text";
import type { Complaint, RecordRule } from "../../model/rule.ts";
import type { FormulaNameParts } from "../../model/subjects.ts";
import { PROPERTIES } from "../../shared/formulaProperties.ts";
import { placesOfName } from "../../shared/formulaSpans.ts";
import { formulasIn } from "../../shared/formulasIn.ts";
import { gather, nothing } from "../../shared/gather.ts";

const PLAIN = ["lineVolts", "lineHertz"];

/** Every name of a formula means something. */
export const formulaName: RecordRule = {
  code: "UC-403",
  name: "formula-name",
  scope: "record",
  severity: "error",
  title: "Every name in a formula is a role of its template with one of the properties, a setting, lineVolts or lineHertz",
  why: "A name without a value leaves the requirement unjudged on every bench.",
  bad: '"formula": "reservior.ratedVolts >= 450"',
  good: '"formula": "reservoir.ratedVolts >= 450"',
  kinds: ["stage", "rule-of-thumb"],
  check(record) {
    const formulas = formulasIn(record);
    if (formulas.length === 0) return [];
    const roles = new Map<string, string>();
    if (record.kind === "stage") for (const { role, kind } of (record.value as StageTemplate).parts) roles.set(role, kind);
    const plain = new Set(
      record.kind === "stage"
        ? [...PLAIN, ...Object.keys((record.value as StageTemplate).settings ?? {})]
        : Object.keys((record.value as RuleOfThumb).formula?.where ?? {}),
    );
    return gather(formulas, ({ text, path, parsed }) =>
      parsed.ok
        ? gather(parsed.names, (name): readonly Complaint[] => {
            const fault = faultOf(name, roles, plain);
            return fault === undefined
              ? nothing()
              : placesOfName(text, name.name).map((within) => ({
                  at: { path, within: shifted(within, fault) },
                  ...fault.complaint,
                  // A name that is none has no unit either, which follows.
                  rank: -1,
                }));
          })
        : nothing(),
    );
  },
};

interface Fault {
  /** Characters of the name before what is wrong, and how many are wrong. */
  before: number;
  length: number;
  complaint: Omit<Complaint, "at">;
}

/** @param roles the kind of part in each */
function faultOf(
  { name, role, property }: FormulaNameParts,
  roles: ReadonlyMap<string, string>,
  plain: ReadonlySet<string>,
): Fault | undefined {
  if (role === undefined || property === undefined) {
    if (plain.has(name)) return undefined;
    return fault(0, name, `nothing is called "${name}"`, [...plain], roles.has(name) ? `${name}.present` : undefined);
  }
  const kind = roles.get(role);
  if (kind === undefined) return fault(0, role, `the template has no role "${role}"`, [...roles.keys()]);
  if (Object.hasOwn(PROPERTIES, property)) return undefined;
  const had = Object.keys(PROPERTIES).filter((name) => PROPERTIES[name]?.includes(kind) !== false);
  return fault(role.length + 1, property, `a ${kind} has no property "${property}"`, had, otherWord(property, had));
}

/** Properties by other words for the same: a type's limits, a part's ratings. */
function otherWord(property: string, known: readonly string[]): string | undefined {
  const rest = /^(?:max|limit|rated|rating)(.+)$/.exec(property)?.[1];
  return rest === undefined ? undefined : [`limit${rest}`, `rated${rest}`, `max${rest}`].find((name) => known.includes(name));
}

function fault(before: number, word: string, message: string, known: readonly string[], nearest?: string): Fault {
  return {
    before,
    length: word.length,
    complaint: { message, received: word, expected: oneOf(known, 40), nearest: nearest ?? nearestOf(word, known) },
  };
}

const shifted = ({ offset }: { offset: number }, { before, length }: Fault) => ({ offset: offset + before, length });
