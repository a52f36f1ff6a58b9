import { type NumberExpression, unitOf } from "@underchassis/calc/expression";
import { READING_UNIT, type RuleOfThumb } from "@underchassis/dataset";
import { nearestOf, oneOf } from "@underchassis/source-text";
import type { RecordRule } from "../../model/rule.ts";
import { PROPERTIES } from "../../shared/formulaProperties.ts";
import { formulasIn } from "../../shared/formulasIn.ts";
import { gather, nothing } from "../../shared/gather.ts";
import { unitWords } from "../../shared/unitFaults.ts";
import { gives, rightWithUnsaidUnits } from "../../shared/unsaidUnits.ts";

/** By name, since a record that breaks its schema may hold any. */
const UNITS: Readonly<Record<string, string>> = READING_UNIT;

/** Units that a rule of thumb may give, each with what unitOf calls it. */
const RESULTS: ReadonlyMap<string, string> = new Map([
  ...["V", "A", "ohm", "F", "H", "W", "J", "Hz", "s", "S"].map((unit) => [unit, unit] as const),
  ["ratio", ""],
]);

/** A formula gives the unit that stands beside it. */
export const expectedDimension: RecordRule = {
  code: "UC-407",
  name: "expected-dimension",
  scope: "record",
  severity: "error",
  title: "The formula of an expected figure gives the unit of its quantity, that of a rule of thumb the unit it says",
  why: "A formula in ohms beside a reading in volts compares nothing.",
  bad: '"quantity": "dc-volts", "formula": "filterResistor.ohms"',
  good: '"quantity": "dc-volts", "formula": "filterResistor.meanAmps * filterResistor.ohms"',
  kinds: ["stage", "rule-of-thumb"],
  check: (record) => {
    const thumb = record.kind === "rule-of-thumb" ? (record.value as RuleOfThumb).formula : undefined;
    if (thumb !== undefined && !RESULTS.has(thumb.unit))
      return [
        {
          at: { path: ["formula", "unit"] },
          message: "no unit that a formula gives",
          received: thumb.unit,
          expected: oneOf([...RESULTS.keys()]),
          nearest: nearestOf(thumb.unit, RESULTS.keys()),
          help: "formulas reckon in base units: 1800 s, not 30 min",
        },
      ];
    return gather(formulasIn(record), ({ text, path, quantity, parsed }) => {
      const unit = thumb === undefined ? UNITS[quantity ?? ""] : RESULTS.get(thumb.unit);
      if (unit === undefined || !parsed.ok || parsed.gives !== "number") return nothing();
      const { given, bare, right } = unitsOf(parsed.expression as NumberExpression);
      // Mixed units are the matter of another rule, and a bare number may stand for any.
      if (given === undefined || given === unit || bare || right(unit, thumb === undefined ? "number" : "truth")) return nothing();
      // Of a name that means nothing the unit is not known; another rule tells.
      if (parsed.names.some(({ property }) => property !== undefined && !Object.hasOwn(PROPERTIES, property))) return nothing();
      return [
        {
          at: { path, within: { offset: 0, length: text.length } },
          message: `the formula gives ${unitWords(given)}, and the figure is ${thumb === undefined ? "read" : "given"} in ${unitWords(unit)}`,
          received: text,
          expected: unitWords(unit),
        },
      ];
    });
  },
};

interface Units {
  given: string | undefined;
  /** Its number may be of any unit. */
  bare: boolean;
  /** Whether it gives a unit once a number or two of it are quantities. @param wanted truth: margins and ratios are none */
  right(unit: string, wanted: "truth" | "number"): boolean;
}

const known = new WeakMap<NumberExpression, Units>();

/** The units of a formula; looked into once for all templates that share it. */
function unitsOf(expression: NumberExpression): Units {
  let units = known.get(expression);
  if (units === undefined) {
    const given = unitOf(expression);
    const rights = new Map<string, boolean>();
    const right: Units["right"] = (unit, wanted) => {
      const key = `${wanted} ${unit}`;
      const earlier = rights.get(key);
      if (earlier !== undefined) return earlier;
      const now = rightWithUnsaidUnits(expression, wanted, (formula) => gives(formula, unit));
      rights.set(key, now);
      return now;
    };
    units = { given, bare: given === "" && isBare(expression), right };
    known.set(expression, units);
  }
  return units;
}

/** Whether a formula without a unit is one without quantities, so that its number may be of any unit. */
function isBare(expression: NumberExpression): boolean {
  return unitOf(expression, { kind: "name", name: "x.ratedVolts" }) !== undefined;
}
