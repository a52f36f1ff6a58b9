import { preferredWithin } from "../candidates.ts";
import { cornerOf, withCorners } from "../corner.ts";
import { filterMake, filterRating, filterSeries, shareLimits } from "../ratings.ts";
import type { Role } from "../substitution.ts";

/** Cathode bypass: -10 +100 %, and the corner moves with it (reference section 1.3, practical choice). */
export const cathodeBypass: Role = {
  id: "cathode-bypass",
  title: "Cathode bypass capacitor",
  kind: "capacitor",
  hint: { electrolytic: true },
  substitute(part, context) {
    const { cathodeOhms } = context;
    const limits = shareLimits(part.value, 0.1, 1, { text: "from 10 % below to twice the old value", source: "common-practice" });
    const { ratings, missing } = filterRating(part, context);
    return {
      limits,
      candidates: withCorners(preferredWithin(part.value, limits, filterSeries(part)), cathodeOhms),
      ...cornerOf(part.value, cathodeOhms),
      ratings,
      make: filterMake(part),
      rules: [
        {
          text: "the corner is that of the capacitor and the cathode resistor, where the gain begins to rise; the full gain comes higher up, where the cathode's own resistance is bridged too",
          source: "computed",
        },
        { text: "a shorted one takes the bias away: find the voltage across it again", source: "common-practice" },
      ],
      missing: [...(cathodeOhms === undefined ? ["the cathode resistor, for the corner frequency"] : []), ...missing],
    };
  },
};
