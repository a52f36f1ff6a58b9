import { formatQuantity } from "../quantities/formatQuantity.ts";
import { ratingFrom } from "./candidates.ts";
import type { Rating, Rule, SubstituteContext, SubstitutePart } from "./substitution.ts";

/** Rated DC voltages made today (from-memory; the table of rated volts has the same rows). */
export const electrolyticVolts = [16, 25, 35, 50, 63, 100, 160, 200, 250, 315, 350, 400, 450, 500] as const;
export const filmVolts = [63, 100, 160, 250, 400, 630, 1000, 1250, 1600, 2000] as const;
export const micaVolts = [100, 300, 500, 1000] as const;

/** A rating is used to at most 80 % of it (S59; reference section 9.8). */
export const voltageMargin = 1.25;

interface Answer {
  ratings: Rating[];
  missing: string[];
}

function byVolts(part: SubstitutePart, context: SubstituteContext, made: readonly number[], source: string, stated: string): Answer {
  const { ratedVolts } = part;
  const { workingVolts } = context;
  const worst = workingVolts === undefined ? undefined : workingVolts * voltageMargin;
  const missing = workingVolts === undefined ? ["the worst-case voltage across it, so that the rating can be judged by more than the old part's"] : [];
  if (ratedVolts === undefined && worst === undefined) return { ratings: [], missing };
  const least = Math.max(ratedVolts ?? 0, worst ?? 0);
  const parts = [
    ...(ratedVolts === undefined ? [] : [`the old part's ${formatQuantity(ratedVolts, "voltage")}`]),
    ...(worst === undefined ? [] : [`${voltageMargin} times the worst case, ${formatQuantity(worst, "voltage")}`]),
  ];
  const standard = ratingFrom(made, least);
  const rule: Rule = { text: `${stated}: not below ${parts.join(" nor ")}`, source };
  return { ratings: [{ quantity: "dc volts", least, ...(standard === undefined ? {} : { standard }), rule }], missing };
}

/** DC volts of a film part that takes the place of paper: at least the old rating and 1.25 times the worst case. */
export const filmRating = (part: SubstitutePart, context: SubstituteContext): Answer =>
  byVolts(part, context, filmVolts, "film-selection-notes", "a film part is used to at most 80 % of its rating");

/** DC volts of an electrolytic: at least the old rating and 1.25 times the worst case, cold tubes and no load. */
export const electrolyticRating = (part: SubstitutePart, context: SubstituteContext): Answer =>
  byVolts(part, context, electrolyticVolts, "filter-value-pages", "an electrolytic works at most at 80 % of its rating, and stands the no-load peak");

/** DC volts of mica or C0G ceramic. */
export const micaRating = (part: SubstitutePart, context: SubstituteContext): Answer =>
  byVolts(part, context, micaVolts, "film-selection-notes", "the same margin as film");

/** Whether a capacitor is, or is replaced by, an electrolytic. */
export const isElectrolytic = (part: SubstitutePart): boolean => part.dielectric === "electrolytic" || part.dielectric === "tantalum";
