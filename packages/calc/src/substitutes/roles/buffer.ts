import { preferredWithin, ratingFrom } from "../candidates.ts";
import { filmVolts, shareLimits } from "../ratings.ts";
import type { Role } from "../substitution.ts";

/** Least DC rating of a vibrator's buffer (rule R30). */
const leastVolts = 1600;

/** Buffer across a vibrator transformer: the same value, 1.6 to 2 kV, always replaced (rule R30). */
export const buffer: Role = {
  id: "buffer",
  title: "Buffer capacitor of a vibrator transformer",
  kind: "capacitor",
  substitute(part) {
    const rule = {
      text: "the same value, to a tenth: it is tuned to the transformer and decides how long the contacts live",
      source: "vibrator-text",
    };
    const limits = shareLimits(part.value, 0.1, 0.1, rule);
    const least = Math.max(leastVolts, part.ratedVolts ?? 0);
    const standard = ratingFrom(filmVolts, least);
    const volts = { text: "1.6 to 2 kV", source: "vibrator-text" };
    return {
      limits,
      candidates: preferredWithin(part.value, limits, ["E12", "E24"]),
      ratings: [{ quantity: "dc volts", least, ...(standard === undefined ? {} : { standard }), rule: volts }],
      make: ["polypropylene film made for pulses"],
      rules: [{ text: "replaced always, before the vibrator is tried", source: "vibrator-text" }],
      missing: [],
    };
  },
};
