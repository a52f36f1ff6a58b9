import { formatQuantity } from "../../quantities/formatQuantity.ts";
import { nearestPreferred } from "../../quantities/preferred/series.ts";
import { deviationOf, preferredWithin } from "../candidates.ts";
import { filterMake, filterRating, filterSeries } from "../ratings.ts";
import type { Role, Rule, SubstituteContext } from "../substitution.ts";

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
    const limits = { lowest: lowestShare * aim, highest, rule };
    const { ratings, missing } = filterRating(part, context);
    const source = context.rectifier?.source ?? "filter-value-pages";
    return {
      limits,
      candidates: preferredWithin(aim, limits, filterSeries(part)).map((one) => ({
        ...one,
        deviation: deviationOf(one.value, part.value),
      })),
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
