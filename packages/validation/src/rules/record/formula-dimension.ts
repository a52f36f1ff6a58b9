import type { RecordRule } from "../../model/rule.ts";
import { formulaSpans } from "../../shared/formulaSpans.ts";
import { formulasIn } from "../../shared/formulasIn.ts";
import { unitFaults } from "../../shared/unitFaults.ts";
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
  kinds: ["stage"],
  check: (record) =>
    formulasIn(record).flatMap(({ text, path, wanted, parsed }) => {
      if (!parsed.ok) return [];
      const spans = formulaSpans(text, parsed.expression);
      const faults = unitFaults(parsed.expression);
      if (faults.length === 0 || rightWithUnsaidUnits(parsed.expression, wanted, (formula) => unitFaults(formula).length === 0)) return [];
      return faults.map(({ node, ...fault }) => ({
        at: { path, within: spans?.(node) ?? { offset: 0, length: text.length } },
        ...fault,
      }));
    }),
};
