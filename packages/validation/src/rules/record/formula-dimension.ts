import type { Expression } from "@underchassis/calc/expression";
import type { RecordRule } from "../../model/rule.ts";
import { formulaSpans } from "../../shared/formulaSpans.ts";
import { formulasIn } from "../../shared/formulasIn.ts";
import { gather, nothing } from "../../shared/gather.ts";
import { type UnitFault, unitFaults, unitsFit } from "../../shared/unitFaults.ts";
import { rightWithUnsaidUnits } from "../../shared/unsaidUnits.ts";

/** Only like things are added and compared. */
export const formulaDimension: RecordRule = {
  code: "UC-406",
  name: "formula-dimension",
  scope: "record",
  severity: "error",
  title: "A formula adds and compares only like things: volts to volts, ohms to ohms",
  why: "Volts compared with ohms give an answer that means nothing, and look like a check.",
  bad: '"formula": "reservoir.ratedVolts >= reservoir.farads"',
  good: '"formula": "reservoir.ratedVolts >= reservoir.maxVolts"',
  kinds: ["stage", "rule-of-thumb"],
  check: (record) =>
    gather(formulasIn(record), ({ text, path, wanted, parsed }) => {
      if (!parsed.ok) return nothing();
      const faults = faultsOf(parsed.expression, wanted);
      if (faults.length === 0) return nothing();
      const spans = formulaSpans(text, parsed.expression);
      return faults.map(({ node, ...fault }) => ({
        at: { path, within: spans?.(node) ?? { offset: 0, length: text.length } },
        ...fault,
      }));
    }),
};

/** Formulas recur from template to template; each is looked into once. */
const known = new WeakMap<Expression, UnitFault[]>();

function faultsOf(expression: Expression, wanted: "truth" | "number"): UnitFault[] {
  let faults = known.get(expression);
  if (faults === undefined) {
    faults = unitsFit(expression) || rightWithUnsaidUnits(expression, wanted, unitsFit) ? [] : unitFaults(expression);
    known.set(expression, faults);
  }
  return faults;
}
