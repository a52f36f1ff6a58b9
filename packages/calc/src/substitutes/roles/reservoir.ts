import { formatQuantity } from "../../quantities/formatQuantity.ts";
import { nearestPreferred } from "../../quantities/preferred/series.ts";
import { deviationOf, preferredWithin } from "../candidates.ts";
import { filterMake, filterRating, filterSeries, tidy } from "../ratings.ts";
import type { Candidate, Limits, Role, Rule, SubstituteContext, SubstitutePart } from "../substitution.ts";

/** Below the old value by as much as vendors accept; less lowers B+ and raises hum (rule R1). */
const lowestShare = 0.8;

function upperLimit(old: number, { rectifier }: SubstituteContext): { highest: number; rule: Rule } {
  if (rectifier) {
    const limit = formatQuantity(rectifier.maxInputFarads, "capacitance");
    const text = `up only as far as the ${rectifier.type} allows, ${limit}: the peak of each charging pulse grows with the capacitance`;
    return { highest: rectifier.maxInputFarads, rule: { text, source: rectifier.source } };
  }
  const text = "the rectifier is not known: the same or the next size up, no further";
  return { highest: nearestPreferred(old * 1.001, "E6", "up"), rule: { text, source: "filter-value-pages" } };
}

/** From here on a value counts as the same: the old part itself was made 10 % below its mark. */
const sameShare = 0.9;

/** The same or the next size up before any smaller one (rule R1); E12 where E6 has nothing within the limits. */
function candidatesFor(part: SubstitutePart, aim: number, limits: Limits): Candidate[] {
  const usual = preferredWithin(aim, limits, filterSeries(part));
  const found = usual.length > 0 ? usual : preferredWithin(aim, limits, ["E12"]);
  const below = ({ value }: Candidate): number => Number(value < sameShare * aim);
  return found
    .toSorted((one, other) => below(one) - below(other))
    .map((one) => ({ ...one, deviation: deviationOf(one.value, part.value) }));
}

/** First filter capacitor behind the rectifier: the rectifier sets its upper limit (reference section 10.5, rule R1). */
export const reservoir: Role = {
  id: "reservoir",
  title: "First filter capacitor, behind the rectifier",
  kind: "capacitor",
  hint: { electrolytic: true },
  substitute(part, context) {
    const { highest, rule } = upperLimit(part.value, context);
    // An original above the limit is no licence to repeat it.
    const aim = Math.min(part.value, highest);
    const limits = { lowest: tidy(lowestShare * aim), highest, rule };
    const { ratings, missing } = filterRating(part, context);
    const source = context.rectifier?.source ?? "filter-value-pages";
    return {
      limits,
      candidates: candidatesFor(part, aim, limits),
      ratings,
      make: filterMake(part),
      rules: [
        {
          text: "a smaller one lowers B+ and raises the hum; a larger one raises B+ and the heat of rectifier and transformer",
          source: "filter-value-pages",
        },
        ...(part.value > highest ? [{ text: "the old part was already above what the rectifier allows", source }] : []),
        { text: "its ripple current is about 1.2 to 1.8 times the direct current of a full-wave supply", source: "from-memory" },
      ],
      missing: [...(context.rectifier ? [] : ["the rectifier's type"]), ...missing],
    };
  },
};
