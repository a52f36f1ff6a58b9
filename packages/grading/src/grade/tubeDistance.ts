import type { TubeRecord } from "@underchassis/dataset";
import type { ChassisModel, Life } from "../model/index.ts";

type Distance = NonNullable<TubeRecord["units"][number]["distance"]>[number];

/**
 * How far a tube's model lies from the published points of its record, in words, for a prediction that leans on it.
 *
 * @param model chassis that the tube stands in
 * @param part id of the part
 * @param life life whose tube it is, since another type may have been fitted
 * @returns "model within 4 % of published plate current, 9 % of transconductance"; undefined for a part that is no tube, or one
 *   whose record states no distance
 */
export function tubeDistance(model: ChassisModel, part: string, life: Life): string | undefined {
  const type = model.parts.get(part)?.lives[life].type;
  const record = type === undefined ? undefined : model.dataset.tubes.get(type.toUpperCase());
  const distances = record?.units.flatMap(({ distance }) => distance ?? []) ?? [];
  if (distances.length === 0) return undefined;
  const worst = (of: (distance: Distance) => number | undefined) =>
    Math.ceil(100 * Math.max(...distances.map((distance) => Math.abs(of(distance) ?? 0))));
  const slope = distances.some(({ transconductance }) => transconductance !== undefined);
  return `model within ${worst(({ plateAmps }) => plateAmps)} % of published plate current${
    slope ? `, ${worst(({ transconductance }) => transconductance)} % of transconductance` : ""
  }`;
}
