import { preferredWithin } from "../candidates.ts";
import { cornerOf, withCorners } from "../corner.ts";
import { filmRating, shareLimits } from "../ratings.ts";
import type { Role } from "../substitution.ts";

/** Coupling capacitor between stages: -10 +25 %, and the low corner moves with it (reference section 1.3; rules R5, R9). */
export const coupling: Role = {
  id: "coupling",
  title: "Coupling capacitor between stages",
  kind: "capacitor",
  substitute(part, context) {
    const { gridLeakOhms } = context;
    const rule = { text: "any value from 10 % below to 25 % above: the old part was 20 % or wider", source: "from-memory" };
    const limits = shareLimits(part.value, 0.1, 0.25, rule);
    const { ratings, missing } = filmRating(part, context);
    return {
      limits,
      candidates: withCorners(preferredWithin(part.value, limits, ["E6", "E12"]), gridLeakOhms),
      ...cornerOf(part.value, gridLeakOhms),
      ratings,
      make: ["polypropylene or polyester film; 1 kV and more at an output transformer's primary"],
      rules: [
        {
          text: "the corner is that of the capacitor and the grid resistor; the stage that drives it adds its own resistance and lowers it a little",
          source: "computed",
        },
        {
          text: "its leakage lifts the next grid: at most 10 to 20 mV on a small triode, a tenth of the bias on a power stage",
          source: "leakage-text",
        },
        { text: "the end marked as outer foil goes to the driving plate; it is no polarity", source: "outside-foil-notes" },
      ],
      missing: [...(gridLeakOhms === undefined ? ["the grid resistor, for the corner frequency"] : []), ...missing],
    };
  },
};
