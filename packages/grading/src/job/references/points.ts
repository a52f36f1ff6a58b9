import { nearestOf, oneOf } from "@underchassis/source-text";
import { isDoubtful, type ReferenceContext, report } from "./context.ts";
import { listedPoints, touchedPoints } from "./pointIndex.ts";

/** When the job lists its points: whether parts and binds keep to the list, and whether the list names points that nothing touches. */
export function checkListedPoints(context: ReferenceContext): void {
  const listed = listedPoints(context);
  if (listed === undefined) return;
  const { survey } = context;
  const allowed = new Set([
    ...listed,
    survey.reference,
    ...survey.linePoints,
    ...survey.stages.flatMap(({ points }) => [...points.values()].filter((point) => point.includes(":"))),
  ]);
  const check = (point: string, path: readonly (string | number)[]) => {
    if (allowed.has(point)) return;
    report(context, path, {
      code: "point-unlisted",
      message: `the point "${point}" is not in the job's list of points`,
      received: point,
      expected: oneOf(listed),
      nearest: () => nearestOf(point, listed),
      help: 'add it to "points", or take the point that is meant',
    });
  };
  for (const stage of survey.stages) for (const [terminal, point] of stage.bind) check(point, [...stage.path, "bind", terminal]);
  for (const part of survey.parts) for (const { point, path } of part.leads) if (path) check(point, path);
  const touched = touchedPoints(survey);
  for (const point of listed) {
    if ((touched.get(point) ?? 0) > 0 || isDoubtful(context, point) || point === survey.reference || survey.linePoints.includes(point))
      continue;
    report(
      context,
      ["points", point],
      {
        code: "point-idle",
        severity: "warning",
        message: `no part touches the point "${point}"`,
        received: point,
        nearest: () => nearestOf(point, touched.keys()),
      },
      "key",
    );
  }
}
