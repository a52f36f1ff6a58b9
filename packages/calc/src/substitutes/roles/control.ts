import { deviationOf } from "../candidates.ts";
import { shareLimits } from "../ratings.ts";
import type { Candidate, Role } from "../substitution.ts";

/** Controls are still made in 1-2-5 and 1-2.5-5 steps, and in E3 (reference section 1.3). */
const steps = [1, 2, 2.2, 2.5, 4.7, 5] as const;

function made(old: number, lowest: number, highest: number): Candidate[] {
  const power = Math.floor(Math.log10(old));
  const all = [power - 1, power, power + 1].flatMap((decade) => steps.map((step) => Number(`${step}e${decade}`)));
  return all
    .filter((value) => value >= lowest && value <= highest)
    .map((value) => ({ value, deviation: deviationOf(value, old), series: "steps of controls" }))
    .toSorted((one, other) => Math.abs(one.deviation) - Math.abs(other.deviation))
    .slice(0, 3);
}

/** Potentiometers keep value and taper. */
export const control: Role = {
  id: "control",
  title: "Potentiometer",
  kind: "resistor",
  substitute(part) {
    const { ratedWatts, tolerance = { minus: 0.2, plus: 0.2 } } = part;
    const rule = { text: "the same value: controls are still made in the old steps", source: "common-practice" };
    const limits = shareLimits(part.value, tolerance.minus, tolerance.plus, rule);
    const watts = { text: "not below the old part's watts", source: "common-practice" };
    return {
      limits,
      candidates: made(part.value, limits.lowest, limits.highest),
      ratings: ratedWatts === undefined ? [] : [{ quantity: "watts", least: ratedWatts, rule: watts }],
      make: ["the same taper, logarithmic for volume; with the old taps and switch"],
      rules: [
        { text: "cleaning saves most of them", source: "common-practice" },
        { text: "where it carries direct current, as in a screen or cathode, its watts count: wirewound again", source: "common-practice" },
      ],
      missing: ratedWatts === undefined ? ["the old part's watts, where it carries direct current"] : [],
    };
  },
};
