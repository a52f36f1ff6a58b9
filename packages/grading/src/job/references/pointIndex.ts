import { recordOf } from "@underchassis/source-text";
import type { ReferenceContext } from "./context.ts";
import type { Survey } from "./survey.ts";

/** Every point that exists in the chassis -> how many leads touch it (through all of their lives). */
export function touchedPoints({ parts, stages, reference, linePoints }: Survey): Map<string, number> {
  const touched = new Map<string, number>();
  const touch = (point: string, leads: number) => touched.set(point, (touched.get(point) ?? 0) + leads);
  for (const { leads } of parts) for (const { point } of leads) touch(point, 1);
  for (const { bind } of stages) for (const point of bind.values()) touch(point, 0);
  for (const point of [reference, ...linePoints]) touch(point, 0);
  return touched;
}

/** The chassis's own list of points, when the job gives one. */
export function listedPoints({ job }: ReferenceContext): readonly string[] | undefined {
  const points = recordOf(job.value).points;
  return points === undefined ? undefined : Object.keys(recordOf(points));
}
