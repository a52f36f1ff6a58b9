import type { JobPart } from "@underchassis/dataset";
import { describe, expect, it } from "vitest";
import { modelOf } from "../testing/model.ts";
import { halfWaveParts, observableAt, outputStageParts } from "../testing/suspectChassis.ts";
import { lay } from "./ground.ts";
import { spreadRipple } from "./rippleSpread.ts";

/** Ripple and direct voltage of the first capacitor, with what unequal halves make of them. */
function spread(parts: readonly JobPart[]) {
  const ground = lay(modelOf({ parts: [...parts] }), "found", [observableAt("ripple-volts", "raw"), observableAt("dc-volts", "raw")]);
  const before = Float64Array.from(ground.slopes);
  spreadRipple(ground, 60, new Set([0, 1]));
  const slopeOf = (key: string, index = 0) => {
    const column = ground.parameters.findIndex((parameter) => parameter.key === key);
    expect(column, key).toBeGreaterThanOrEqual(0);
    return ground.slopes[index * ground.parameters.length + column]!;
  };
  return { ground, before, slopeOf, width: ground.parameters.length };
}
const supply = outputStageParts.filter(({ name }) => name !== "V2" && !["R3", "R4", "R5"].includes(name));

describe("spreadRipple", () => {
  const full = spread(supply);
  const half = spread(halfWaveParts);
  const nominal = full.ground.nominal[0]!;

  it("a full-wave supply with equal halves: no slope to either side, and a ripple that is larger on the average", () => {
    const halves = full.ground.parameters.filter(({ key }) => /^(T1\|hv-|V1\/plate-)/.test(key));
    expect(halves.length).toBeGreaterThanOrEqual(2);
    const { offsets, soft } = full.ground;
    expect(offsets[0]).toBeGreaterThan(0.02 * nominal);
    expect(soft[0]).toBeGreaterThan(0);
    // The mean and the spread of the size of a normal value: sqrt(2/pi) = 0.80 and sqrt(1 - 2/pi) = 0.60 of its deviation.
    expect(offsets[0]! / soft[0]!).toBeCloseTo(0.8 / 0.6, 9);
    for (const { key } of halves) expect(Math.abs(full.slopeOf(key)), key).toBeLessThan(0.5 * offsets[0]!);
  });

  it("halves answer alike, one up as the other down", () => {
    const [one, other] = [full.slopeOf("T1|hv-1.turns|"), full.slopeOf("T1|hv-2.turns|")];
    // The two halves are the same winding's: ripple to a thousandth.
    expect(Math.abs(one - other)).toBeLessThan(2e-3 * nominal);
  });

  it("a half-wave supply has nothing that balances: next to no offset", () => {
    expect(Math.abs(half.ground.offsets[0]!)).toBeLessThan(5e-3 * half.ground.nominal[0]!);
    expect(half.ground.soft[0]).toBeLessThan(5e-3 * half.ground.nominal[0]!);
  });

  it("leaves direct voltages, and what balances nothing, as they are", () => {
    for (const { ground, before, width } of [full, half]) {
      expect(ground.offsets[1]).toBe(0);
      expect(ground.soft[1]).toBe(0);
      expect([...ground.slopes.subarray(width)]).toEqual([...before.subarray(width)]);
      const farads = ground.parameters.findIndex(({ key }) => key === "C1|farads|");
      expect(ground.slopes[farads]).toBe(before[farads]);
      expect(before[farads]).toBeLessThan(0);
    }
  });

  it("looks at nothing that is not wanted", () => {
    const ground = lay(modelOf({ parts: [...supply] }), "found", [observableAt("ripple-volts", "raw")]);
    const before = Float64Array.from(ground.slopes);
    spreadRipple(ground, 60, new Set());
    expect([ground.offsets[0], ground.soft[0], [...ground.slopes]]).toEqual([0, 0, [...before]]);
  });
});
