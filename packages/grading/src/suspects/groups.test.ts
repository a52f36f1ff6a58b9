import { describe, expect, it } from "vitest";
import { groundOf, observableAt } from "../testing/suspectChassis.ts";
import { deviationOf, groupsOf } from "./groups.ts";
import type { Judged } from "./judged.ts";
import { ownVariance } from "./likelihood.ts";

const ground = groundOf([
  { observable: observableAt("dc-volts", "a"), nominal: 100, slopes: [2, 1] },
  { observable: observableAt("ohms", "a"), nominal: 10e3, slopes: [0.1, 0] },
]);

const suspect = (part: string, posterior: number, predicted: readonly number[]) => {
  const fault = { kind: "open", part, element: part } as const;
  const fit = { logLikelihood: 0, deviations: new Float64Array(0), squares: 0 };
  const judged: Judged = { fault, edit: fault, prior: 1, logWeight: 0, fit, predicted: Float64Array.from(predicted) };
  return { judged, posterior };
};
const partsOf = (entries: ReturnType<typeof suspect>[]) =>
  groupsOf(entries, ground).map(({ members }) => members.map(({ judged }) => judged.fault.part));
const cold = Math.log(10e3);

describe("groupsOf", () => {
  it("joins what agrees wherever a meter could be put, and adds up the belief", () => {
    const groups = groupsOf([suspect("R1", 0.5, [100, cold]), suspect("R2", 0.3, [100, cold]), suspect("R3", 0.2, [60, cold])], ground);
    expect(groups.map(({ posterior }) => posterior)).toEqual([0.8, 0.2]);
    expect(groups[0]!.members[0]!.judged.fault.part).toBe("R1");
  });

  it("keeps apart what one reading tells apart by more than its deviation", () => {
    const deviation = deviationOf(ground, 0, 50);
    expect(partsOf([suspect("R1", 0.5, [50, cold]), suspect("R2", 0.5, [50 + 0.99 * deviation, cold])])).toEqual([["R1", "R2"]]);
    expect(partsOf([suspect("R1", 0.5, [50, cold]), suspect("R2", 0.5, [50 + 1.01 * deviation, cold])])).toEqual([["R1"], ["R2"]]);
    expect(partsOf([suspect("R1", 0.5, [50, cold]), suspect("R2", 0.5, [50, cold + 1])])).toEqual([["R1"], ["R2"]]);
  });

  it("holds nothing against what is not simulated", () => {
    expect(partsOf([suspect("R1", 0.5, [50, cold]), suspect("R2", 0.5, [Number.NaN, cold])])).toEqual([["R1", "R2"]]);
  });

  it("puts the group with the most belief first", () => {
    const entries = [suspect("R1", 0.4, [100, cold]), suspect("R2", 0.35, [10, cold]), suspect("R3", 0.25, [10, cold])];
    expect(partsOf(entries)).toEqual([["R2", "R3"], ["R1"]]);
  });
});

describe("deviationOf", () => {
  it("is the spread of the parts with the meter's and the model's", () => {
    expect(deviationOf(ground, 0, 100)).toBeCloseTo(Math.sqrt(2 ** 2 + 1 ** 2 + ownVariance(ground, 0, 100)), 12);
  });

  it("spreads a lower voltage less, in proportion, and ohms as they are", () => {
    expect(deviationOf(ground, 0, 50)).toBeCloseTo(Math.sqrt(5 / 4 + ownVariance(ground, 0, 50)), 12);
    expect(deviationOf(ground, 1, cold - 1)).toBeCloseTo(Math.sqrt(0.01 + ownVariance(ground, 1, cold - 1)), 12);
  });
});
