import { ratingFrom } from "./candidates.ts";
import type { Rating, SubstituteContext } from "./substitution.ts";

/** Highest line over nominal that is reckoned with (from-memory: 132 V on a 120 V line, 253 V on 230 V). */
const lineMargin = 1.1;
/** AC ratings that class X and Y parts are made in (from-memory). */
const classVolts = [250, 275, 300, 310, 440, 500] as const;

export const lineCaution = "Line wiring: the local code and licensed practice come first.";

/** The highest line voltage, RMS, that a part on the line is judged at. */
export const highestLineVolts = ({ lineVolts = 120 }: SubstituteContext): number => Number((lineMargin * lineVolts).toPrecision(6));

/** A word on the voltage taken when none is given. */
export const noLineVolts = ({ lineVolts }: SubstituteContext): string[] =>
  lineVolts === undefined ? ["the line voltage: 120 V at 60 Hz is taken"] : [];

/** AC rating of a class X or Y part on the line. */
export function lineRating(context: SubstituteContext): Rating {
  const least = highestLineVolts(context);
  const standard = ratingFrom(classVolts, least);
  const rule = { text: "an AC rating not below the highest line voltage", source: "iec-60384-14" };
  return { quantity: "ac volts", least, ...(standard === undefined ? {} : { standard }), rule };
}
