import type { JobPart } from "@underchassis/dataset";
import { describe, expect, it } from "vitest";
import { modelOf } from "../testing/model.ts";

const SITUATION = { life: "found", condition: "operating", line: "actual" } as const;
const PROBE = { quantity: "dc-volts", at: "mid", to: "chassis" } as const;

/** 300 V into two resistors of 1 Mohm. */
const divider: JobPart[] = [
  { name: "BT", kind: "battery", marked: "300 V", between: ["top", "chassis"] },
  { name: "R1", kind: "resistor", marked: "1 Mohm", between: ["top", "mid"] },
  { name: "R2", kind: "resistor", marked: "1 Mohm", between: ["mid", "chassis"] },
];
const model = modelOf({ parts: divider, readings: [{ at: "mid", quantity: "dc-volts", value: "140 V" }] });
const unread = modelOf({ parts: divider });

describe("a meter on a divider", () => {
  // E (R2 || Rm) / (R1 + R2 || Rm).
  const byHand = (ohms: number) => {
    const lower = 1 / (1 / 1e6 + 1 / ohms);
    return (300 * lower) / (1e6 + lower);
  };

  // 10 Mohm; 20 kohm/V on 250 V; 1 kohm/V on 250 V; a meter that hardly loads, which takes the linear correction.
  it.each([10e6, 5e6, 250e3, 200e6])("of %d ohm", (ohms) => {
    expect(model.predict(SITUATION, PROBE, { ohms, accuracy: 0 })!.nominal).toBeCloseTo(byHand(ohms), 3);
  });

  it("loads a point that nobody has read as well", () => {
    expect(unread.predict(SITUATION, PROBE, { ohms: 5e6, accuracy: 0 })!.nominal).toBeCloseTo(byHand(5e6), 3);
  });

  it("between two points loads neither of them alone", () => {
    const probe = { quantity: "dc-volts", at: "top", to: "mid" } as const;
    expect(model.predict(SITUATION, probe, { ohms: 5e6, accuracy: 0 })!.nominal).toBeCloseTo(byHand(5e6), 3);
  });

  it("that is not there leaves the point alone", () => {
    expect(unread.predict(SITUATION, PROBE)!.nominal).toBeCloseTo(150, 9);
    // Where a reading is taken, a voltmeter of 1e12 ohm lies in the network to find out how stiff the point is.
    expect(model.predict(SITUATION, PROBE)!.nominal).toBeCloseTo(150, 3);
  });

  it("scales the window with the reading", () => {
    const [bare, loaded] = [model.predict(SITUATION, PROBE)!, model.predict(SITUATION, PROBE, { ohms: 250e3, accuracy: 0 })!];
    expect(loaded.sigma / bare.sigma).toBeCloseTo(loaded.nominal / bare.nominal, 6);
  });
});

describe("a meter on a rectified supply", () => {
  const supply: JobPart[] = [
    {
      name: "T1",
      kind: "transformer",
      windings: {
        primary: { between: ["line hot", "line neutral"], marked: "117 V", measured: "5 ohm" },
        hv: { between: ["hv", "chassis"], marked: "60 V", measured: "50 ohm" },
      },
    },
    { name: "D1", kind: "rectifier", type: "silicon 400 V 1 A", between: ["hv", "raw"] },
    { name: "C1", kind: "capacitor", marked: "10 uF 150 V", between: ["raw", "chassis"] },
    { name: "R1", kind: "resistor", marked: "470 kohm", between: ["raw", "bias"] },
    { name: "R2", kind: "resistor", marked: "470 kohm", between: ["bias", "chassis"] },
  ];

  it.each([10e6, 500e3])("of %d ohm shows what a resistor of its size in the circuit gives", (ohms) => {
    const reading = { at: "bias", quantity: "dc-volts", value: "40 V" } as const;
    const seen = modelOf({ parts: supply, readings: [reading] }).predict(SITUATION, { ...reading, to: "chassis" }, { ohms, accuracy: 0 })!;
    const part: JobPart = { name: "METER", kind: "resistor", marked: `${ohms} ohm`, between: ["bias", "chassis"] };
    const withPart = modelOf({ parts: [...supply, part] }).predict(SITUATION, { ...reading, to: "chassis" })!;
    expect(Math.abs(seen.nominal / withPart.nominal - 1)).toBeLessThan(1e-3);
  });
});
