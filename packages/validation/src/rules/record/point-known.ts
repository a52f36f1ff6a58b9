import type { StageTemplate } from "@underchassis/dataset";
import { nearestOf, oneOf } from "@underchassis/source-text";
import type { Complaint, RecordRule } from "../../model/rule.ts";
import { partPlaces, readingPlaces, surroundPlaces } from "../../shared/pointPlaces.ts";
import { pointsOf } from "../../shared/pointsOf.ts";

/** Parts lie between points that there are. */
export const pointKnown: RecordRule = {
  code: "UC-416",
  name: "point-known",
  scope: "record",
  severity: "error",
  title: "Every end of a part, pin and winding is a terminal or inner point, and every one of these has a part",
  why: "A misspelt point is a new one that nothing else touches: the part hangs in the air.",
  bad: '"between": ["inptu", "return"]',
  good: '"between": ["input", "return"]',
  kinds: ["stage"],
  check(record) {
    const template = record.value as StageTemplate;
    const points = pointsOf(template);
    if (isSound(template, points)) return [];
    const used = [...partPlaces(template), ...readingPlaces(template)];
    const surrounded = new Set(surroundPlaces(template).map(({ name }) => name));
    return [
      ...used.flatMap(({ name, path }): Complaint[] =>
        points.has(name)
          ? []
          : [
              {
                at: { path },
                message: `the template has no point "${name}"`,
                received: name,
                expected: oneOf([...points], 30),
                nearest: nearestOf(name, points),
              },
            ],
      ),
      ...template.terminals.flatMap(({ id }, index): Complaint[] =>
        used.some((end) => end.name === id) || surrounded.has(id)
          ? []
          : [
              {
                at: { path: ["terminals", index, "id"] },
                message: `no part touches the terminal "${id}"`,
                received: id,
                expected: "a part that lies at it, or no such terminal",
              },
            ],
      ),
      ...Object.keys(template.points ?? {}).flatMap((name): Complaint[] =>
        used.some((end) => end.name === name) || surrounded.has(name)
          ? []
          : [
              {
                at: { path: ["points", name], part: "key" },
                message: `no part touches the point "${name}"`,
                received: name,
                expected: "a part that lies at it, or no such point",
              },
            ],
      ),
    ];
  },
};

/** Whether all points used are there, and all that are there used: most templates are, and need no list of places. */
function isSound({ parts, expected, terminals, points: inner, typical }: StageTemplate, points: ReadonlySet<string>): boolean {
  const used = new Set<string>();
  for (const { between, pins, windings } of parts) {
    if (between !== undefined) for (const name of between) used.add(name);
    for (const pin in pins) used.add(pins[pin as keyof typeof pins] as string);
    for (const id in windings) for (const name of windings[id]?.between ?? []) used.add(name);
  }
  for (const { at, to } of expected) {
    if (at !== undefined) used.add(at);
    if (to !== undefined) used.add(to);
  }
  for (const name of used) if (!points.has(name)) return false;
  const surrounded = typical?.parts ?? [];
  const isTouched = (name: string): boolean => used.has(name) || surrounded.some(({ between }) => between.includes(name));
  for (const name in inner) if (!isTouched(name)) return false;
  for (const { id } of terminals) if (!isTouched(id)) return false;
  return true;
}
