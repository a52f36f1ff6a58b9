import { listOf, nearestOf, oneOf, recordOf, textOf } from "@underchassis/source-text";
import type { Path } from "../loadedJob.ts";
import { type ReferenceContext, report } from "./context.ts";

/** Meters that readings and measurements name. */
export function checkMeters(context: ReferenceContext): void {
  const root = recordOf(context.job.value);
  const known = Object.keys(recordOf(root.meters));
  const check = (holder: unknown, path: Path) => {
    const meter = textOf(recordOf(holder).meter);
    if (meter === undefined || known.includes(meter)) return;
    report(context, [...path, "meter"], {
      code: "meter-unknown",
      message: `no meter is called "${meter}"`,
      received: meter,
      expected: known.length === 0 ? 'the id of a meter in "meters"; the job has none' : oneOf(known),
      nearest: () => nearestOf(meter, known),
    });
  };
  for (const [index, reading] of listOf(root.readings).entries()) check(reading, ["readings", index]);
  for (const { path, written } of context.survey.parts) {
    if (path === undefined) continue;
    check(written.measured, [...path, "measured"]);
    check(recordOf(written.fitted).measured, [...path, "fitted", "measured"]);
  }
}
