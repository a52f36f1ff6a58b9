import { expect, it } from "vitest";
import { nearestOf } from "./nearest.ts";

it.each([
  ["resister", ["capacitor", "resistor"], "resistor"],
  ["form", ["to", "from"], "from"],
  ["Tubes Out", ["tubes-out", "standby"], "tubes-out"],
  ["B +", ["B+", "B-"], "B+"],
  ["iec-60063", ["iec-60063-2015", "iec-60065"], "iec-60063-2015"],
  ["foundbetween", ["between", "foundBetween"], "foundBetween"],
])("takes %s for one of %j", (word, candidates, nearest) => {
  expect(nearestOf(word, candidates)).toBe(nearest);
});

it("offers nothing far off, and nothing for a word of any length", () => {
  expect(nearestOf("choke", ["reservoir", "bleeder"])).toBeUndefined();
  expect(nearestOf("audio", ["audio-oscillator-lamp", "audio-transformer-driver"])).toBeUndefined();
  expect(nearestOf("x".repeat(100), ["x".repeat(99)])).toBeUndefined();
});
