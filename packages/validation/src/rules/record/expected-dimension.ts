import { type NumberExpression, unitOf } from "@underchassis/calc/expression";
import { READING_UNIT } from "@underchassis/dataset";
import type { RecordRule } from "../../model/rule.ts";
import { formulasIn } from "../../shared/formulasIn.ts";
import { gather, nothing } from "../../shared/gather.ts";
import { unitWords } from "../../shared/unitFaults.ts";
import { gives, rightWithUnsaidUnits } from "../../shared/unsaidUnits.ts";

/** By name, since a record that breaks its schema may hold any. */
const UNITS: Readonly<Record<string, string>> = READING_UNIT;

/** An expected figure's formula gives what its meter shows. */
export const expectedDimension: RecordRule = {
  code: "UC-407",
  name: "expected-dimension",
  scope: "record",
  severity: "error",
  title: "The formula of an expected figure gives the unit of its quantity",
  why: "A formula in ohms beside a reading in volts compares nothing.",
  bad: '"quantity": "dc-volts", "formula": "filterResistor.ohms"',
  good: '"quantity": "dc-volts", "formula": "filterResistor.meanAmps * filterResistor.ohms"',
  kinds: ["stage"],
  check: (record) =>
    gather(formulasIn(record), ({ text, path, quantity, parsed }) => {
      const unit = UNITS[quantity ?? ""];
      if (unit === undefined || !parsed.ok || parsed.gives !== "number") return nothing();
      const { given, bare, right } = unitsOf(parsed.expression as NumberExpression);
      // Mixed units are the matter of another rule, and a bare number may stand for any.
      if (given === undefined || given === unit || bare || right(unit)) return nothing();
      return [
        {
          at: { path, within: { offset: 0, length: text.length } },
          message: `the formula gives ${unitWords(given)}, and the figure is read in ${unitWords(unit)}`,
          received: text,
          expected: unitWords(unit),
        },
      ];
    }),
};

interface Units {
  given: string | undefined;
  /** Its number may be of any unit. */
  bare: boolean;
  /** Whether it gives a unit once a number or two of it are quantities. */
  right(unit: string): boolean;
}

const known = new WeakMap<NumberExpression, Units>();

/** The units of a formula; looked into once for all templates that share it. */
function unitsOf(expression: NumberExpression): Units {
  let units = known.get(expression);
  if (units === undefined) {
    const given = unitOf(expression);
    const rights = new Map<string, boolean>();
    const right = (unit: string): boolean => {
      const earlier = rights.get(unit);
      if (earlier !== undefined) return earlier;
      const now = rightWithUnsaidUnits(expression, "number", (formula) => gives(formula, unit));
      rights.set(unit, now);
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
