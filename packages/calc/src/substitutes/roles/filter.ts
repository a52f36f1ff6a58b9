import { preferredWithin } from "../candidates.ts";
import { filterMake, filterRating, filterSeries } from "../ratings.ts";
import type { Role } from "../substitution.ts";

/** Filter and decoupling capacitors behind the first one: -0 +100 % (rule R2). */
export const filter: Role = {
  id: "filter",
  title: "Later filter or B+ decoupling capacitor",
  kind: "capacitor",
  hint: { electrolytic: true },
  substitute(part, context) {
    const text = "not below the old value, up to twice it: old parts were made -10 +50 % or wider";
    const limits = { lowest: part.value, highest: 2 * part.value, rule: { text, source: "filter-value-pages" } };
    const { ratings, missing } = filterRating(part, context);
    return {
      limits,
      candidates: preferredWithin(part.value, limits, filterSeries(part)),
      ratings,
      make: filterMake(part),
      rules: [
        {
          text: "more capacitance means less hum, and a charge that stays longer after the load or the bleeder has gone",
          source: "common-practice",
        },
        {
          text: "the can's minus may go to a back-bias resistor and not to the chassis: keep the old return",
          source: "common-practice",
        },
      ],
      missing,
    };
  },
};
