import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { colours } from "./colours.ts";
import { type CapacitorFamily, capacitorFamilies, decodeCapacitorColours } from "./decodeCapacitorColours.ts";

const read = (marks: string, family?: CapacitorFamily) => {
  const result = decodeCapacitorColours(marks.split(" "), family);
  if (!result.ok) throw new Error(result.problem.message);
  return result.value;
};

describe("decodeCapacitorColours with a declared family", () => {
  it.each([
    // The printed example of S16: upper row black, green, brown; lower row red, yellow, black: 51 pF, characteristic C.
    ["black green brown red yellow black", "mica-aws-6", { value: 51e-12, characteristic: "C" }],
    ["white red green brown gold brown", "mica-aws-6", { value: 250e-12, tolerance: { minus: 0.05, plus: 0.05 }, characteristic: "B" }],
    // S14: three dots, 500 V and 20 % by default.
    ["red green brown", "mica-rma-3", { value: 250e-12, ratedVolts: 500, tolerance: { minus: 0.2, plus: 0.2 } }],
    ["brown black red blue silver", "mica-rma-5", { value: 1000e-12, ratedVolts: 600, tolerance: { minus: 0.1, plus: 0.1 } }],
    ["red green black green silver black", "mica-rma-6", { value: 250e-12, ratedVolts: 500, tolerance: { minus: 0.1, plus: 0.1 } }],
    // S18: hundreds of volts, two bands from 1000 V.
    ["yellow violet orange black blue", "paper-bands", { value: 47e-9, ratedVolts: 600 }],
    ["brown black yellow white brown blue", "paper-bands", { value: 100e-9, ratedVolts: 1600, tolerance: { minus: 0.1, plus: 0.1 } }],
    // S17.
    ["brown black yellow white red", "polyester-bands", { value: 100e-9, ratedVolts: 250, tolerance: { minus: 0.1, plus: 0.1 } }],
    [
      "violet yellow violet brown green",
      "ceramic-5",
      { value: 470e-12, temperatureCoefficientPpm: [-750, -750], tolerance: { minus: 0.05, plus: 0.05 } },
    ],
    [
      "black yellow violet white green",
      "ceramic-5",
      { value: 4.7e-12, temperatureCoefficientPpm: [0, 0], tolerance: { minus: 0.106383, plus: 0.106383 } },
    ], // 0.5 of 4.7 pF
    ["orange orange brown black brown white", "ceramic-6", { value: 100e-12, temperatureCoefficientPpm: [-1500, -1500] }],
    ["brown black orange", "ceramic-3", { value: 10e-9 }],
  ] as const)("%s as %s", (marks, family, wanted) => {
    expect(read(marks, family)[0]).toMatchObject(wanted);
  });

  it("gives both orders of five dots and says so", () => {
    const readings = read("red green brown green red", "mica-rma-5");
    expect(readings.map((reading) => [reading.ratedVolts, reading.tolerance.plus])).toEqual([
      [500, 0.02],
      [200, 0.05],
    ]);
    expect(readings[0]?.notes[0]).toMatch(/not settled/);
  });
});

describe("decodeCapacitorColours without a family", () => {
  it("gives every family that fits", () => {
    const families = read("brown black red black blue").map((reading) => reading.family);
    expect(families).toContain("RMA 5-dot mica");
    expect(families).toContain("moulded paper");
    expect(new Set(families).size).toBeGreaterThan(1);
  });

  it("puts a black first dot down to its type: it is no figure", () => {
    const readings = read("black red green red gold brown");
    expect(readings[0]).toMatchObject({ family: "AWS/JAN/EIA 6-dot mica", value: 250e-12 });
    expect(readings.every((reading) => reading.family !== "RMA 6-dot mica")).toBe(true);
  });

  it("refuses a wrong number of marks, a colour that is none, and marks that fit nothing", () => {
    expect(decodeCapacitorColours(["red", "red"]).ok).toBe(false);
    expect(decodeCapacitorColours(["red", "red", "red"], "mica-aws-6").ok).toBe(false);
    expect(decodeCapacitorColours(["red", "mauve", "red"])).toMatchObject({ problem: { offset: 4, length: 5 } });
    expect(decodeCapacitorColours(["gold", "gold", "gold"]).ok).toBe(false);
  });

  it("never throws; every value is a capacitance of at most 10 uF with a reason", () => {
    fc.assert(
      fc.property(
        fc.array(fc.constantFrom(...colours), { maxLength: 8 }),
        fc.option(fc.constantFrom(...capacitorFamilies), { nil: undefined }),
        (marks, family) => {
          const result = decodeCapacitorColours(marks, family);
          if (!result.ok) return result.problem.message !== "";
          return result.value.every(
            (one) => one.value > 0 && one.value <= 1e-5 && one.because !== "" && one.tolerance.minus >= 0 && one.tolerance.minus <= 1,
          );
        },
      ),
      { numRuns: 2000 },
    );
  }, 30_000);
});
