import { formatQuantity } from "../quantities/formatQuantity.ts";
import type { SeriesName } from "../quantities/preferred/series.ts";
import { ratingFrom } from "./candidates.ts";
import type { Limits, Rating, Rule, SubstituteContext, SubstitutePart } from "./substitution.ts";

/** Rated DC voltages made today (from-memory; the table of rated volts has the same rows). */
export const electrolyticVolts = [16, 25, 35, 50, 63, 100, 160, 200, 250, 315, 350, 400, 450, 500] as const;
export const filmVolts = [63, 100, 160, 250, 400, 630, 1000, 1250, 1600, 2000] as const;
export const micaVolts = [100, 300, 500, 1000] as const;

/** A rating is used to at most 80 % of it (S59; reference section 9.8). */
const voltageMargin = 1.25;

interface Answer {
  ratings: Rating[];
  missing: string[];
}

function byVolts(part: SubstitutePart, context: SubstituteContext, made: readonly number[], source: string, stated: string): Answer {
  const { ratedVolts } = part;
  const { workingVolts } = context;
  const worst = workingVolts === undefined ? undefined : workingVolts * voltageMargin;
  const missing =
    workingVolts === undefined ? ["the worst-case voltage across it, so that the rating can be judged by more than the old part's"] : [];
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

/** DC volts of a filter capacitor: an electrolytic works at 80 % at most, cold tubes and no load included; film as elsewhere. */
export const filterRating = (part: SubstitutePart, context: SubstituteContext): Answer =>
  isElectrolytic(part)
    ? byVolts(part, context, electrolyticVolts, "filter-value-pages", "an electrolytic works at 80 % of its rating at most")
    : filmRating(part, context);

/** DC volts of mica or C0G ceramic. */
export const micaRating = (part: SubstitutePart, context: SubstituteContext): Answer =>
  byVolts(part, context, micaVolts, "film-selection-notes", "the same margin as film");

/** Whether a capacitor is, and is replaced by, an electrolytic. */
export const isElectrolytic = ({ dielectric }: SubstitutePart): boolean => dielectric === "electrolytic" || dielectric === "tantalum";

/** The series it is made in: electrolytics in E6, film in E12. */
export const filterSeries = (part: SubstitutePart): readonly SeriesName[] => (isElectrolytic(part) ? ["E6"] : ["E6", "E12"]);

/** What a filter capacitor is made of today. */
export const filterMake = (part: SubstitutePart): readonly string[] =>
  isElectrolytic(part) ? ["electrolytic, 105 degC, with the ripple current of the place"] : ["film, or oil where the original was oil"];

/** Without the rounding of doubles in the last places. */
export const tidy = (value: number): number => Number(value.toPrecision(9));

/** From `minus` below to `plus` above a value, both as shares of it. */
export const shareLimits = (value: number, minus: number, plus: number, rule: Rule): Limits => ({
  lowest: tidy(value * (1 - minus)),
  highest: tidy(value * (1 + plus)),
  rule,
});
