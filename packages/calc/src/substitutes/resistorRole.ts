import { preferredWithin } from "./candidates.ts";
import { shareLimits } from "./ratings.ts";
import { resistorRatings } from "./resistorRating.ts";
import type { Rating, Role, Rule } from "./substitution.ts";

/** What distinguishes one resistor's place from another. */
export interface ResistorPlace {
  id: string;
  title: string;
  /** No wider than this share either way, whatever the old tolerance. */
  closest?: number;
  limitRule: Rule;
  /** The new watts over the old. */
  times: number;
  /** Changes a rating where the place asks for more than its least. */
  rate?: (rating: Rating) => Rating;
  make: readonly string[];
  rules: readonly Rule[];
}

/** A resistor's role: E24 within the old tolerance, watts and body volts. Nearest value first. */
export function resistorRole({ id, title, closest = 1, limitRule, times, rate = (rating) => rating, make, rules }: ResistorPlace): Role {
  return {
    id,
    title,
    kind: "resistor",
    substitute(part, context) {
      const { minus, plus } = part.tolerance ?? { minus: 0.2, plus: 0.2 };
      const limits = shareLimits(part.value, Math.min(minus, closest), Math.min(plus, closest), limitRule);
      const { ratings, missing } = resistorRatings(part, context, times);
      return { limits, candidates: preferredWithin(part.value, limits, ["E12", "E24"]), ratings: ratings.map(rate), make, rules, missing };
    },
  };
}
