import { isPreferred } from "../quantities/preferred/series.ts";
import { problem, quoted } from "../quantities/problem.ts";
import type { Result } from "../quantities/types.ts";
import { ceramicFiveMarks, ceramicSixMarks, ceramicThreeMarks } from "./ceramicMarks.ts";
import type { CodeReading } from "./codeReading.ts";
import { type Colour, colourNamed } from "./colours.ts";
import type { Reader } from "./dotReading.ts";
import { awsSixDots, rmaFiveDots, rmaSixDots, rmaThreeDots } from "./micaDots.ts";
import { paperBands, polyesterBands } from "./paperBands.ts";

/** Families of colour-coded capacitors, with the numbers of marks each can have. */
const families = {
  "mica-rma-3": { marks: [3], read: rmaThreeDots },
  "mica-rma-5": { marks: [5], read: rmaFiveDots },
  "mica-aws-6": { marks: [6], read: awsSixDots },
  "mica-rma-6": { marks: [6], read: rmaSixDots },
  "paper-bands": { marks: [5, 6], read: paperBands },
  "polyester-bands": { marks: [5], read: polyesterBands },
  "ceramic-3": { marks: [3], read: ceramicThreeMarks },
  "ceramic-5": { marks: [5], read: ceramicFiveMarks },
  "ceramic-6": { marks: [6], read: ceramicSixMarks },
} as const satisfies Record<string, { marks: readonly number[]; read: Reader }>;

export type CapacitorFamily = keyof typeof families;

/** The names a family can be declared by. */
export const capacitorFamilies = Object.keys(families) as readonly CapacitorFamily[];

const expected = "three, five or six colours in reading order; of six mica dots the upper row, then the lower row, each from left to right";

/** Values of the years before preferred values, by their figures (reference section 1.2, history). */
const roundFigures = new Set([10, 20, 25, 30, 40, 50, 60, 75, 80]);

/** How well a value fits what was made: 3 preferred in E12, 2 in E24 or round as before 1940, 0 odd. */
export function valueLikelihood(value: number): number {
  if (isPreferred(value, "E12")) return 3;
  if (isPreferred(value, "E24")) return 2;
  const figures = Math.round(Number(value.toExponential(6).split("e")[0]) * 10);
  return roundFigures.has(figures) ? 2 : 0;
}

/**
 * Every reading of a capacitor's colour marks, in farads. Without a declared family the same dots read differently in
 * RMA, JAN and EIA: all families' readings come back, values that were made first, and more than one means ambiguous.
 */
export function decodeCapacitorColours(
  names: readonly string[],
  family?: CapacitorFamily | readonly CapacitorFamily[],
): Result<readonly CodeReading[]> {
  const marks: Colour[] = [];
  let offset = 0;
  for (const name of names) {
    const colour = colourNamed(name);
    if (!colour) return problem(`${quoted(name)} is not a colour of the code`, offset, name.length, expected);
    marks.push(colour);
    offset += name.length + 1;
  }
  const length = Math.max(0, offset - 1);
  const tried = family === undefined ? capacitorFamilies : [family].flat();
  const fitting = tried.filter(
    (name) => Object.hasOwn(families, name) && (families[name].marks as readonly number[]).includes(marks.length),
  );
  if (fitting.length === 0) {
    const which = family === undefined ? "no family of capacitors" : tried.join(", ");
    return problem(`${which} has ${marks.length} mark${marks.length === 1 ? "" : "s"}`, 0, length, expected);
  }
  const readings = fitting.flatMap((name) => families[name].read(marks));
  if (readings.length === 0) return problem(`${quoted(names.join(" "))} fits no code of ${fitting.join(", ")}`, 0, length, expected);
  const order = new Map(readings.map((reading, place) => [reading, valueLikelihood(reading.value) * 100 - place]));
  return { ok: true, value: readings.toSorted((one, other) => (order.get(other) ?? 0) - (order.get(one) ?? 0)) };
}
