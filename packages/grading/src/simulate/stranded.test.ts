import { describe, expect, it } from "vitest";
import { modelOf } from "../testing/model.ts";
import { referenceDataset } from "../testing/referenceDataset.ts";

/** A tube rectifier into filters that nothing discharges, as most receivers stand with their tubes out. */
const parts: NonNullable<Parameters<typeof modelOf>[0]["parts"]> = [
  {
    name: "T1",
    kind: "transformer",
    windings: {
      primary: { between: ["line hot", "line neutral"], marked: "120 V", measured: "2 ohm" },
      hv: { between: ["a", "chassis", "b"], marked: "340-0-340 V", measured: "76 ohm" },
    },
  },
  { name: "V1", kind: "rectifier", type: "5U4GB", pins: { "plate-1": "a", "plate-2": "b", cathode: "B+" } },
  { name: "C1", kind: "capacitor", between: ["B+", "chassis"], marked: "33 uF 600 V" },
  { name: "L1", kind: "inductor", between: ["B+", "B+2"], marked: "4 H 100 ohm" },
  { name: "C2", kind: "capacitor", between: ["B+2", "chassis"], marked: "22 uF 600 V" },
];

describe("filters that nothing discharges", () => {
  it("stand at the crest at every line voltage, whichever was solved before", () => {
    const model = modelOf({ parts }, referenceDataset());
    for (const line of [120, 126, 108, 132, 120]) {
      const solved = model.solve({ life: "restored", condition: "tubes-out", line });
      if (!solved.ok) throw new Error(solved.message);
      // Unloaded, a rectifier charges to the crest of the winding: sqrt(2) V. Definition of the RMS value.
      const crest = (Math.SQRT2 * 340 * line) / 120;
      for (const point of ["B+", "B+2"])
        expect(Math.abs((solved.steady.points.get(point)?.meanVolts ?? 0) / crest - 1)).toBeLessThan(0.005);
    }
  });

  it("let an unloaded doubler of selenium stacks be solved", () => {
    const stack = { kind: "rectifier" as const, marked: "selenium 150 mA 130 V" };
    const model = modelOf(
      {
        parts: [
          { name: "C1", kind: "capacitor", between: ["pump", "line hot"], marked: "100 uF 200 V" },
          { name: "D1", between: ["chassis", "pump"], ...stack },
          { name: "D2", between: ["pump", "B+"], ...stack },
          { name: "C2", kind: "capacitor", between: ["B+", "chassis"], marked: "100 uF 400 V" },
          { name: "W1", kind: "wire", between: ["line neutral", "chassis"] },
        ],
      },
      referenceDataset(),
    );
    const solved = model.solve({ life: "restored", condition: "tubes-out", line: 120 });
    if (!solved.ok) throw new Error(solved.message);
    // Twice the crest, less two knees of five plates, about half a volt each.
    const volts = solved.steady.points.get("B+")?.meanVolts ?? 0;
    expect(volts).toBeGreaterThan(2 * Math.SQRT2 * 120 - 10);
    expect(volts).toBeLessThan(2 * Math.SQRT2 * 120);
  });
});
