import { formatQuantity } from "../../quantities/formatQuantity.ts";
import { preferredWithin } from "../candidates.ts";
import { highestLineVolts, lineCaution, lineRating, noLineVolts } from "../lineRating.ts";
import type { Role, Rule, SubstituteContext } from "../substitution.ts";

/** Touch current: 0.25 mA without protective earth, 0.75 mA for portable earthed equipment (reference section 6.2). */
const limitAmps = { unearthed: 0.25e-3, earthed: 0.75e-3 };
/** Class Y ceramics are made +-20 %: the limit must hold for the largest (common-practice). */
const makersTolerance = 0.2;
/** Below this it does little on the broadcast band (common-practice). */
const leastUseful = 1e-9;

/** The largest marked value that the touch current allows, farads, and why: I = 2 pi f C V at the highest line. */
function largest(context: SubstituteContext): { farads: number; rule: Rule } {
  const volts = highestLineVolts(context);
  const hertz = context.lineHertz ?? 60;
  const amps = context.earthed ? limitAmps.earthed : limitAmps.unearthed;
  const all = amps / (2 * Math.PI * hertz * volts);
  const at = `${formatQuantity(amps, "current")} at ${formatQuantity(volts, "voltage")} and ${hertz} Hz`;
  const text = `touch current: all line-to-chassis capacitance together at most ${formatQuantity(all, "capacitance")} for ${at}, a part's own +20 % included`;
  return { farads: all / (1 + makersTolerance), rule: { text, source: "iec-60335-1" } };
}

/** Line to chassis: class Y1 or Y2, and only as large as the touch current allows (reference sections 6.1 to 6.3). */
export const lineToChassis: Role = {
  id: "line-to-chassis",
  title: "Capacitor from line to chassis",
  kind: "capacitor",
  substitute(part, context) {
    const { farads, rule } = largest(context);
    const highest = Math.min(farads, 1.25 * part.value);
    const limits = { lowest: Math.min(leastUseful, 0.8 * highest), highest, rule };
    const earth = context.earthed
      ? "with protective earth the limit is that of portable earthed equipment"
      : "without protective earth none at all is best";
    return {
      limits,
      candidates: preferredWithin(part.value, limits, ["E6"]),
      ratings: [lineRating(context)],
      make: ["class Y1 or Y2; class X never, nor a part without class"],
      rules: [
        { text: "a shorted one puts the line on the chassis, which is what class Y is made to prevent", source: "iec-60384-14" },
        { text: earth, source: "common-practice" },
      ],
      cautions: [lineCaution, "Measure the touch current of the finished set, with the plug both ways round."],
      missing: [
        ...noLineVolts(context),
        ...(context.earthed === undefined ? ["whether the chassis has protective earth: none is taken"] : []),
      ],
    };
  },
};
