import { formatQuantity } from "../../quantities/formatQuantity.ts";
import { preferredWithin } from "../candidates.ts";
import { highestLineVolts, lineCaution, lineRating, noLineVolts } from "../lineRating.ts";
import { shareLimits } from "../ratings.ts";
import type { Role, Rule } from "../substitution.ts";

/** Up to this a capacitor across the line needs no discharge path; above it 34 V after 1 s (IEC 60335-1, secondary copies). */
const withoutDischarge = 0.1e-6;
const residual = { volts: 34, seconds: 1 };

/** The largest discharge resistor of the largest capacitor allowed, at the highest line; nothing up to 0.1 uF. */
function discharge(farads: number, volts: number): Rule[] {
  if (farads <= withoutDischarge * (1 + 1e-9)) return [];
  const most = residual.seconds / (farads * Math.log((Math.SQRT2 * volts) / residual.volts));
  const text = `with ${formatQuantity(farads, "capacitance")} a discharge resistor of at most ${formatQuantity(most, "resistance")}, made for the line voltage and on the plug's side of the switch, brings it to ${residual.volts} V in ${residual.seconds} s`;
  return [{ text, source: "iec-60335-1" }];
}

/** Across the line: class X1 or X2, or Y (reference sections 6.1, 6.4). */
export const acrossLine: Role = {
  id: "across-line",
  title: "Capacitor across the line",
  kind: "capacitor",
  substitute(part, context) {
    const rule = { text: "about the old value: it keeps interference off the line, no more", source: "common-practice" };
    const limits = shareLimits(part.value, 0.2, 0.2, rule);
    const candidates = preferredWithin(part.value, limits, ["E6", "E12"]);
    return {
      limits,
      candidates,
      ratings: [lineRating(context)],
      make: ["class X1 or X2; class Y1 or Y2 may stand in for it"],
      rules: [
        { text: "a paper, film or ceramic part without class does not do, whatever its DC volts", source: "iec-60384-14" },
        ...discharge(candidates[0]?.value ?? part.value, highestLineVolts(context)),
      ],
      cautions: [lineCaution],
      missing: noLineVolts(context),
    };
  },
};
