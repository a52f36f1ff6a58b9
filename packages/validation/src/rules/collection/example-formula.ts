import { allFormulas } from "@underchassis/calc/formulas";
import type { WorkedExample } from "@underchassis/dataset";
import { listOf, nearestOf, oneOf, recordOf } from "@underchassis/source-text";
import type { CollectionRule, FiledComplaint } from "../../model/rule.ts";

/** Worked examples work formulas that there are. */
export const exampleFormula: CollectionRule = {
  code: "UC-609",
  name: "example-formula",
  scope: "collection",
  severity: "error",
  title: "A worked example names a formula of the calculator, its arguments and one of its results",
  why: "An example that works nothing holds nothing to account.",
  bad: '"formula": "ohm-law"',
  good: '"formula": "resistor-at-current"',
  check(collection) {
    const formulas = new Map(allFormulas.map((formula) => [formula.id, formula]));
    return collection.files("worked-example").flatMap((file) => {
      return listOf(recordOf(collection.recall(file).value).examples).flatMap((written, index): FiledComplaint[] => {
        const example = recordOf(written) as Partial<WorkedExample>;
        // What the schema asks for and is not there is its rule's matter.
        if (example.formula === undefined || example.output === undefined) return [];
        const { output } = example;
        const formula = formulas.get(example.formula);
        if (formula === undefined)
          return [
            {
              file,
              at: { path: ["examples", index, "formula"] },
              message: "the calculator has no such formula",
              received: example.formula,
              nearest: nearestOf(example.formula, formulas.keys()),
            },
          ];
        const inputs = Object.keys(formula.inputs);
        const outputs = Object.keys(formula.outputs);
        return [
          ...Object.keys(example.inputs ?? {})
            .filter((name) => !inputs.includes(name))
            .map((name) => ({
              file,
              at: { path: ["examples", index, "inputs", name], part: "key" as const },
              message: `${formula.id} takes no "${name}"`,
              received: name,
              expected: oneOf(inputs),
              nearest: nearestOf(name, inputs),
            })),
          ...(outputs.includes(output)
            ? []
            : [
                {
                  file,
                  at: { path: ["examples", index, "output"] },
                  message: `${formula.id} gives no "${output}"`,
                  received: output,
                  expected: oneOf(outputs),
                  nearest: nearestOf(output, outputs),
                },
              ]),
        ];
      });
    });
  },
};
