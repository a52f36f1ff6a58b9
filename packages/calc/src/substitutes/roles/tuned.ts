import { formatQuantity } from "../../quantities/formatQuantity.ts";
import { deviationOf, parallelPair, preferredWithin } from "../candidates.ts";
import { micaRating, shareLimits } from "../ratings.ts";
import type { Candidate, Role } from "../substitution.ts";

/** A pair must come this close to be worth two parts. */
const pairShare = 0.005;

function pairFor(farads: number): Candidate[] {
  const pair = parallelPair(farads, pairShare);
  if (!pair) return [];
  const value = Number((pair[0] + pair[1]).toPrecision(9));
  const series = `E12, ${pair.map((one) => formatQuantity(one, "capacitance")).join(" and ")} in parallel`;
  return [{ value, deviation: deviationOf(value, farads), series }];
}

/** Tuned, padder and oscillator circuits: the value does not move (reference section 1.3; rule R29). */
export const tuned: Role = {
  id: "tuned",
  title: "Capacitor of a tuned, padder or oscillator circuit",
  kind: "capacitor",
  substitute(part, context) {
    const { minus, plus } = part.tolerance ?? { minus: 0.1, plus: 0.1 };
    const rule = {
      text: "the value may not move: within the old part's tolerance, measured before it is fitted",
      source: "common-practice",
    };
    const limits = shareLimits(part.value, Math.min(minus, plus), Math.min(minus, plus), rule);
    const single = preferredWithin(part.value, limits, ["E12", "E24"]);
    const pair = single[0]?.deviation === 0 ? [] : pairFor(part.value);
    const { ratings, missing } = micaRating(part, context);
    const make = part.dielectric === "ceramic" ? "ceramic of the same temperature characteristic" : "silver mica, or C0G ceramic";
    return {
      limits,
      candidates: [...pair, ...single].toSorted((one, other) => Math.abs(one.deviation) - Math.abs(other.deviation)),
      ratings,
      make: [`${make}; its coefficient of temperature must be the old one's, which may cancel a coil's drift`],
      rules: [
        { text: "mica and compensating ceramics are left alone unless one is proven bad", source: "restorer-posts" },
        { text: "the circuit is aligned again afterwards", source: "common-practice" },
      ],
      missing: [...(part.toleranceWritten ? [] : ["the old part's tolerance: the usual one of its age is taken"]), ...missing],
    };
  },
};
