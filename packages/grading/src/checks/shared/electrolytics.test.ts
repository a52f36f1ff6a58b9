import { describe, expect, it } from "vitest";
import { modelOf } from "../../testing/model.ts";
import { leakageLimit, typicalEsr } from "./electrolytics.ts";

const model = modelOf({ parts: [{ name: "R1", kind: "resistor", marked: "1 k", between: ["a", "chassis"] }] });

describe("leakageLimit", () => {
  // JAN-C-62 examples of the reference, 9.3: 20 uF 450 V 1.1 mA; 20 uF 250 V 0.7 mA; 40 uF 450 V 1.9 mA; 25 uF 25 V 0.55 mA.
  it.each([
    [20, 450, 1.1],
    [20, 250, 0.7],
    [40, 450, 1.9],
    [25, 25, 0.55],
  ])("%d uF %d V: %d mA", (microfarads, volts, milliamps) => {
    expect(leakageLimit(model, microfarads * 1e-6, volts)).toBeCloseTo(milliamps / 1000, 9);
  });

  it("knows nothing above 500 V", () => {
    expect(leakageLimit(model, 20e-6, 600)).toBeUndefined();
  });
});

describe("typicalEsr", () => {
  it("takes the table's row, and carries it to a near capacitance by 1 / C (esr-guide: 47 uF 160 V 1.6 ohm)", () => {
    expect(typicalEsr(model, 47e-6, 160)).toBeCloseTo(1.6, 9);
    expect(typicalEsr(model, 40e-6, 160)).toBeCloseTo((1.6 * 47) / 40, 9);
  });

  it("does not stretch to quite another size", () => {
    expect(typicalEsr(model, 1000e-6, 160)).toBeUndefined();
  });
});
