import type { StageTemplate } from "@underchassis/dataset";
import { nearestOf, oneOf, type Path } from "@underchassis/source-text";
import type { Complaint, RecordRule } from "../../model/rule.ts";

function allKnown({ parts, expected, requirements, typical }: StageTemplate): boolean {
  for (const { condition } of expected) if (condition !== undefined && !CONDITIONS.includes(condition)) return false;
  for (const { condition } of requirements) if (condition !== undefined && !CONDITIONS.includes(condition)) return false;
  for (const list of [parts, typical?.parts ?? []])
    for (const { presentIn } of list) if (presentIn?.every((name) => CONDITIONS.includes(name)) === false) return false;
  return true;
}

/** The conditions that every job has. */
const CONDITIONS = ["cold", "tubes-out", "standby", "operating"];

/** Conditions are ones that every job has. */
export const conditionKnown: RecordRule = {
  code: "UC-418",
  name: "condition-known",
  scope: "record",
  severity: "error",
  title: "Every condition is cold, tubes-out, standby or operating",
  why: "A template cannot count on conditions that only some jobs describe.",
  bad: '"condition": "operate"',
  good: '"condition": "operating"',
  kinds: ["stage"],
  check(record) {
    const template = record.value as StageTemplate;
    if (allKnown(template)) return [];
    const { parts, expected, requirements, typical } = template;
    const named: { name: string | undefined; path: Path }[] = [
      ...expected.map(({ condition }, index) => ({ name: condition, path: ["expected", index, "condition"] })),
      ...requirements.map(({ condition }, index) => ({ name: condition, path: ["requirements", index, "condition"] })),
      // A switch's positions may name conditions that only a job describes: where it has none of them, they say nothing.
      ...parts.flatMap(({ presentIn }, index) =>
        (presentIn ?? []).map((name, place) => ({ name, path: ["parts", index, "presentIn", place] })),
      ),
      ...(typical?.parts ?? []).flatMap(({ presentIn }, index) =>
        (presentIn ?? []).map((name, place) => ({ name, path: ["typical", "parts", index, "presentIn", place] })),
      ),
    ];
    return named.flatMap(({ name, path }): Complaint[] =>
      name === undefined || CONDITIONS.includes(name)
        ? []
        : [
            {
              at: { path },
              message: `no condition is called "${name}"`,
              received: name,
              expected: oneOf(CONDITIONS),
              nearest: nearestOf(name, CONDITIONS),
            },
          ],
    );
  },
};
