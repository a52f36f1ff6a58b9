import type { StageTemplate, TubeRecord } from "@underchassis/dataset";
import type { Path } from "@underchassis/source-text";
import type { Complaint, RecordRule } from "../../model/rule.ts";

/** Within one record nothing has the name of another. */
export const nameUnique: RecordRule = {
  code: "UC-415",
  name: "name-unique",
  scope: "record",
  severity: "error",
  title: "Roles, points, requirements and names stand once in a record",
  why: "Of two parts in one role, formulas and jobs reach only one.",
  bad: '"parts": [{ "role": "bleeder" }, { "role": "bleeder" }]',
  good: '"parts": [{ "role": "upperBleeder" }, { "role": "lowerBleeder" }]',
  kinds: ["stage", "tube"],
  check(record) {
    if (record.kind === "tube")
      return repeated(
        (record.value as TubeRecord).names.map((name, index) => ({ name: name.toUpperCase(), path: ["names", index] })),
        "the name",
      );
    const template = record.value as StageTemplate;
    if (!repeats(template)) return [];
    const { parts, terminals, points, requirements, failureNotes, cautions, sources } = template;
    return [
      ...repeated(named(parts, "parts", "role"), "the role"),
      ...repeated(
        [...named(terminals, "terminals", "id"), ...Object.keys(points ?? {}).map((name) => ({ name, path: ["points", name], key: true }))],
        "the point",
      ),
      ...repeated(named(requirements, "requirements", "id"), "the requirement"),
      ...parts.flatMap(({ measure }, index) =>
        repeated(
          (measure ?? []).map((name, place) => ({ name, path: ["parts", index, "measure", place] })),
          "the measurement",
        ),
      ),
      ...repeated(listed(failureNotes, "failureNotes"), "the failure note"),
      ...repeated(listed(cautions, "cautions"), "the caution"),
      ...repeated(listed(sources, "sources"), "the source"),
    ];
  },
};

/** Whether anything stands twice, without a word where. */
function repeats({ parts, terminals, points, requirements, failureNotes, cautions, sources }: StageTemplate): boolean {
  const roles = new Set<string>();
  let measuredTwice = false;
  for (const { role, measure } of parts) {
    roles.add(role);
    if (listRepeats(measure)) measuredTwice = true;
  }
  const places = new Set<string>();
  for (const { id } of terminals) places.add(id);
  let count = terminals.length;
  for (const name in points) {
    places.add(name);
    count++;
  }
  const rules = new Set<string>();
  for (const { id } of requirements) rules.add(id);
  return (
    measuredTwice ||
    roles.size < parts.length ||
    places.size < count ||
    rules.size < requirements.length ||
    listRepeats(failureNotes) ||
    listRepeats(cautions) ||
    listRepeats(sources)
  );
}

const listRepeats = (list: readonly string[] | undefined): boolean =>
  list !== undefined && list.length > 1 && new Set(list).size < list.length;

interface Named {
  name: string;
  path: Path;
  key?: boolean;
}

function named<K extends string>(list: readonly Readonly<Record<K, string>>[], at: string, property: K): Named[] {
  return list.map((item, index) => ({ name: item[property], path: [at, index, property] }));
}

const listed = (list: readonly string[] | undefined, at: string): Named[] =>
  (list ?? []).map((name, index) => ({ name, path: [at, index] }));

function repeated(names: readonly Named[], what: string): Complaint[] {
  if (names.length < 2) return [];
  const seen = new Set<string>();
  return names.flatMap(({ name, path, key }): Complaint[] => {
    if (!seen.has(name)) {
      seen.add(name);
      return [];
    }
    return [
      {
        at: { path, part: key === true ? "key" : "value" },
        message: `${what} "${name}" stands twice`,
        received: name,
        help: "keep one, or name the two apart",
      },
    ];
  });
}
