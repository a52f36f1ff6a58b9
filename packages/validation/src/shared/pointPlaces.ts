import type { StageTemplate } from "@underchassis/dataset";
import type { Path } from "@underchassis/source-text";

/** A point as it is named somewhere in a template. */
export interface PointPlace {
  name: string;
  path: Path;
}

const listed = (names: readonly string[] | undefined, path: Path): PointPlace[] =>
  (names ?? []).map((name, index) => ({ name, path: [...path, index] }));

/** Where parts lie: every end, pin and winding's lead. */
export function partPlaces({ parts }: StageTemplate): PointPlace[] {
  return parts.flatMap((part, index) => [
    ...listed(part.between, ["parts", index, "between"]),
    ...Object.entries(part.pins ?? {}).map(([pin, name]) => ({ name, path: ["parts", index, "pins", pin] })),
    ...Object.entries(part.windings ?? {}).flatMap(([id, { between }]) => listed(between, ["parts", index, "windings", id, "between"])),
  ]);
}

/** Where the typical surroundings lie. */
export function surroundPlaces({ typical }: StageTemplate): PointPlace[] {
  return (typical?.parts ?? []).flatMap(({ between }, index) => listed(between, ["typical", "parts", index, "between"]));
}

/** Where figures are read. */
export function readingPlaces({ expected }: StageTemplate): PointPlace[] {
  return expected.flatMap(({ at, to }, index) => [
    ...(at === undefined ? [] : [{ name: at, path: ["expected", index, "at"] }]),
    ...(to === undefined ? [] : [{ name: to, path: ["expected", index, "to"] }]),
  ]);
}

/**
 * Of some points the one that the fewest ends lie at: of a misspelt name there is one. The surroundings come first, where names are free.
 *
 * @returns undefined where the template names none of them
 */
export function loneliest(template: StageTemplate, points: readonly string[]): PointPlace | undefined {
  const places = [...surroundPlaces(template), ...partPlaces(template)].filter(({ name }) => points.includes(name));
  const uses = (name: string): number => places.filter((place) => place.name === name).length;
  return places.toSorted((a, b) => uses(a.name) - uses(b.name))[0];
}
