import { evaluateFormula, parseFormula } from "@underchassis/calc/expression";
import type { RuleOfThumb } from "@underchassis/dataset";
import type { Complaint, RecordRule } from "../../model/rule.ts";
import { formulasIn } from "../../shared/formulasIn.ts";

/** Half a unit of the last digit that is written, and a little for the arithmetic. */
function rounding(written: number): number {
  const [digits = "", power = "0"] = String(written).split("e");
  const decimals = digits.split(".")[1]?.length ?? 0;
  return 0.5000001 * 10 ** (Number(power) - decimals);
}

/** A rule of thumb's example comes out. */
export const thumbExample: RecordRule = {
  code: "UC-422",
  name: "thumb-example",
  scope: "record",
  severity: "error",
  title: "The example of a rule of thumb gives every name a value and comes out to the digits that it is written with",
  why: "An example that does not come out teaches the wrong rule.",
  bad: '"expression": "volts / amps", "values": { "volts": 10, "amps": 2 }, "result": 20',
  good: '"expression": "volts / amps", "values": { "volts": 10, "amps": 2 }, "result": 5',
  kinds: ["rule-of-thumb"],
  check(record) {
    const { formula } = record.value as RuleOfThumb;
    if (formula?.example === undefined || formulasIn(record).some(({ parsed }) => !parsed.ok)) return [];
    const { values, result } = formula.example;
    const { value, missing } = evaluateFormula(parseFormula(formula.expression), {
      name: (name) => (Object.hasOwn(values, name) ? values[name] : undefined),
      point: () => undefined,
    });
    if (missing.length > 0)
      return [
        {
          at: { path: ["formula", "example", "values"], part: "key" },
          message: `the example gives no value for ${missing.join(", ")}`,
          expected: "a value for every name",
        },
      ] satisfies Complaint[];
    const near = typeof value === "number" && Math.abs(value - result) <= rounding(result);
    return near
      ? []
      : [
          {
            at: { path: ["formula", "example", "result"] },
            message: "the example does not come out",
            received: String(result),
            expected: value === undefined ? "a result that can be worked out" : String(Number(Number(value).toPrecision(4))),
          },
        ];
  },
};
