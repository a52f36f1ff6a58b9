import { listOf, nearestOf, oneOf, recordOf, textOf } from "@underchassis/source-text";
import type { Path } from "../loadedJob.ts";
import { isDoubtful, type ReferenceContext, report } from "./context.ts";
import { type PartNames, partNames } from "./partIndex.ts";

/** Conditions that every job has. */
const STANDING_CONDITIONS: readonly string[] = ["cold", "tubes-out", "standby", "operating"];
const IN_SOCKETS: readonly string[] = ["tube", "rectifier", "regulator-tube"];

/** Conditions that readings and parts name, and the tubes, switches and loads that conditions name. */
export function checkConditions(context: ReferenceContext): void {
  const root = recordOf(context.job.value);
  const known = [...new Set([...STANDING_CONDITIONS, ...Object.keys(recordOf(root.conditions))])];
  const check = (id: unknown, path: Path, part: "key" | "value") => {
    const name = textOf(id);
    if (name === undefined || known.includes(name)) return;
    report(
      context,
      path,
      {
        code: "condition-unknown",
        message: `no condition is called "${name}"`,
        received: name,
        expected: oneOf(known),
        nearest: () => nearestOf(name, known),
        help: 'a condition of your own is described in "conditions"',
      },
      part,
    );
  };
  for (const [index, reading] of listOf(root.readings).entries())
    check(recordOf(reading).condition, ["readings", index, "condition"], "value");
  for (const { path, written } of context.survey.parts) {
    if (path === undefined) continue;
    for (const id of Object.keys(recordOf(written.positions))) check(id, [...path, "positions", id], "key");
    for (const [index, id] of listOf(written.presentIn).entries()) check(id, [...path, "presentIn", index], "value");
  }
  const names = partNames(context.survey);
  for (const [id, condition] of Object.entries(recordOf(root.conditions)))
    checkCondition(context, ["conditions", id], recordOf(condition), names);
}

function checkCondition(context: ReferenceContext, path: Path, condition: Readonly<Record<string, unknown>>, names: PartNames): void {
  for (const [index, tube] of listOf(condition.tubes).entries()) {
    const name = textOf(tube);
    if (name !== undefined) checkPart(context, name, [...path, "tubes", index], "value", names, IN_SOCKETS);
  }
  for (const name of Object.keys(recordOf(condition.switches)))
    checkPart(context, name, [...path, "switches", name], "key", names, ["switch"]);
  for (const name of Object.keys(recordOf(condition.loads))) checkPart(context, name, [...path, "loads", name], "key", names, ["load"]);
}

function checkPart(
  context: ReferenceContext,
  name: string,
  path: Path,
  part: "key" | "value",
  names: PartNames,
  kinds: readonly string[],
): void {
  const kind = names.get(name);
  // An unknown template leaves the kind open.
  if ((kind === undefined && (names.has(name) || isDoubtful(context, name))) || (kind !== undefined && kinds.includes(kind))) return;
  const fitting = [...names].filter(([, other]) => other !== undefined && kinds.includes(other)).map(([id]) => id);
  const word = kinds[0]!;
  report(
    context,
    path,
    {
      code: "part-unknown",
      message: kind === undefined ? `no ${word} is called "${name}"` : `"${name}" is a ${kind}, not a ${word}`,
      received: name,
      expected: fitting.length === 0 ? `the name of a ${word}; the job has none` : oneOf(fitting),
      nearest: () => nearestOf(name, fitting),
    },
    part,
  );
}
