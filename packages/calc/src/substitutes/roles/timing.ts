import { preferredWithin } from "../candidates.ts";
import { filmRating, shareLimits } from "../ratings.ts";
import type { Role } from "../substitution.ts";

/** Tone, de-emphasis, AVC and other time constants: within the old tolerance (reference section 1.3). */
export const timing: Role = {
  id: "timing",
  title: "Capacitor of a tone control, AVC or other time constant",
  kind: "capacitor",
  substitute(part, context) {
    const { minus, plus } = part.tolerance ?? { minus: 0.2, plus: 0.2 };
    const rule = { text: "within the old part's tolerance: the value sets a frequency or a time", source: "from-memory" };
    const limits = shareLimits(part.value, minus, plus, rule);
    const { ratings, missing } = filmRating(part, context);
    return {
      limits,
      candidates: preferredWithin(part.value, limits, ["E6", "E12", "E24"]),
      ratings,
      make: ["film of 5 %; mica or C0G ceramic below 1 nF"],
      rules: [
        {
          text: "on an AVC line leakage counts as much as the value: no electrolytic, no high-K ceramic",
          source: "common-practice",
        },
      ],
      missing,
    };
  },
};
