import { preferredWithin } from "../candidates.ts";
import { filmRating, filterMake, filterRating, filterSeries, isElectrolytic, shareLimits } from "../ratings.ts";
import type { Role } from "../substitution.ts";

/** Screen, grid return and RF bypass: -10 +25 % in film, -0 +100 % in electrolytics (reference section 1.3; rules R2, R5). */
export const bypass: Role = {
  id: "bypass",
  title: "Screen or supply bypass capacitor",
  kind: "capacitor",
  substitute(part, context) {
    const electrolytic = isElectrolytic(part);
    const limits = electrolytic
      ? shareLimits(part.value, 0, 1, { text: "not below the old value, up to twice it", source: "filter-value-pages" })
      : shareLimits(part.value, 0.1, 0.25, { text: "any value from 10 % below to 25 % above", source: "from-memory" });
    const { ratings, missing } = electrolytic ? filterRating(part, context) : filmRating(part, context);
    return {
      limits,
      candidates: preferredWithin(part.value, limits, filterSeries(part)),
      ratings,
      make: electrolytic ? filterMake(part) : ["film; at radio frequencies one with short leads, or ceramic of the same value"],
      rules: [{ text: "the end marked as outer foil goes to the grounded side; it is no polarity", source: "outside-foil-notes" }],
      missing,
    };
  },
};
