import { isPreferred } from "../../quantities/preferred/series.ts";
import type { Dielectric, Marking, ReadingProblem, Result } from "../../quantities/types.ts";
import { capacitorFamiliesOf, dielectricOfFamily } from "../capacitorFamilies.ts";
import type { CodeReading } from "../codeReading.ts";
import { decodeBands } from "../decodeBands.ts";
import { type BodyEndDot, decodeBodyEndDot } from "../decodeBodyEndDot.ts";
import { type CapacitorFamily, capacitorFamilies, decodeCapacitorColours, valueLikelihood } from "../decodeCapacitorColours.ts";
import type { DecodeContext, DecodedReading } from "./decoded.ts";
import { familyFacts, type MarkingFamily } from "./markingFamily.ts";
import { writeBack } from "./writeBack.ts";

/** A reading with how likely it is against the others; only the order counts. */
export interface Ranked {
  reading: DecodedReading;
  score: number;
}

/** What else was written beside the colours. */
export interface Beside {
  dots: boolean;
  dielectric?: Dielectric;
  composition?: NonNullable<Marking["composition"]>;
  ratedWatts?: number;
  ratedVolts?: number;
}

/** Film resistors with five bands are hardly met before this year (common-practice). */
const filmYear = 1960;

/** Everything that the colours can mean, or why they mean nothing, in the code nearest to them. */
export function decodeColours(names: readonly string[], beside: Beside, context: DecodeContext): Result<Ranked[]> {
  const found: Ranked[] = [];
  let trouble: ReadingProblem | undefined;
  const wanted = (family: MarkingFamily): boolean => context.family === undefined || context.family === family;
  const asResistor = context.kind !== "capacitor" && beside.dielectric === undefined && !beside.dots;
  if (wanted("body-end-dot") && context.family !== undefined) {
    const [body = "", end, dot, otherEnd] = names;
    const marks: BodyEndDot = { body, ...(end && { end }), ...(dot && { dot }), ...(otherEnd && { otherEnd }) };
    const result = decodeBodyEndDot(marks);
    if (result.ok) found.push(ranked(result.value, "body-end-dot", beside, 5));
    else trouble = result.problem;
  } else if (wanted("resistor-bands") && (asResistor || context.family !== undefined)) {
    const result = decodeBands(names, { ...context, ...(beside.composition && { composition: beside.composition }) });
    if (result.ok) {
      const base = bandBase(result.value[0], context);
      found.push(...result.value.map((reading, place) => ranked(reading, "resistor-bands", beside, base - place)));
    } else trouble = result.problem;
  }
  if (context.kind !== "resistor" && beside.composition === undefined && beside.ratedWatts === undefined) {
    for (const family of capacitorFamiliesOf(beside.dielectric ?? context.dielectric).filter(wanted)) {
      const result = decodeCapacitorColours(names, family);
      if (result.ok) found.push(...result.value.map((reading, place) => ranked(reading, family, beside, dotScore(reading, place, beside))));
      else if (context.family !== undefined || context.kind === "capacitor") trouble ??= allFamilies(names, context, result.problem);
    }
  }
  if (found.length > 0) return { ok: true, value: found };
  return {
    ok: false,
    problem: trouble ?? { message: "the colours fit no code", offset: 0, length: 0, expected: "the colours in reading order" },
  };
}

/** With several families none of which fits, the problem is that of all of them, not of the first. */
function allFamilies(names: readonly string[], context: DecodeContext, one: ReadingProblem): ReadingProblem {
  if (context.family !== undefined) return one;
  const whole = decodeCapacitorColours(names);
  return whole.ok ? one : whole.problem;
}

/** The order of decodeBands stands; how the whole list fares against capacitors hangs on its first reading. */
function bandBase(first: CodeReading | undefined, context: DecodeContext): number {
  if (first === undefined) return 0;
  const close = (["E96", "E192"] as const).some((series) => isPreferred(first.value, series));
  const early = context.era !== undefined && context.era < filmYear && first.family.startsWith("film");
  return (first.value === 0 || close || valueLikelihood(first.value) > 0 ? 4 : 1) - (early ? 3 : 0);
}

/** Temperature-compensating ceramics end about here (common-practice). */
const largestCompensating = 2.2e-9;

function dotScore(reading: CodeReading, place: number, { dots }: Beside): number {
  const tooLarge =
    reading.family.startsWith("ceramic") && reading.temperatureCoefficientPpm !== undefined && reading.value > largestCompensating;
  return valueLikelihood(reading.value) - place / 10 + (dots ? 2 : 0) - (tooLarge ? 4 : 0);
}

function ranked(reading: CodeReading, family: MarkingFamily, beside: Beside, score: number): Ranked {
  const { family: code, dimension, ...rest } = reading;
  const capacitor = (capacitorFamilies as readonly string[]).includes(family);
  const dielectric = capacitor ? (beside.dielectric ?? dielectricOfFamily(family as CapacitorFamily, code)) : undefined;
  const ofKind = dimension === "capacitance" ? "capacitance" : "resistance";
  return {
    score,
    reading: {
      ...rest,
      kind: capacitor ? "capacitor" : "resistor",
      dimension: ofKind,
      family,
      code,
      ...(dielectric && { dielectric }),
      ...(reading.ratedVolts === undefined ? {} : { ratedVoltsKind: "dc" as const }),
      ...(!capacitor && beside.ratedWatts !== undefined && { ratedWatts: beside.ratedWatts }),
      ...(!capacitor && beside.composition && { composition: beside.composition }),
      written: writeBack(reading.value, ofKind, reading.tolerance),
      source: familyFacts[family].source,
    },
  };
}
