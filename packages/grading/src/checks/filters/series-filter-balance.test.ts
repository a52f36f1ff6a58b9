import { describe, expect, it } from "vitest";
import { modelOf } from "../../testing/model.ts";
import { supplyParts } from "../../testing/supply.ts";
import { seriesFilterBalance } from "./series-filter-balance.ts";

type Parts = ReturnType<typeof supplyParts>;
const source: Parts = [
  { name: "B1", kind: "battery", marked: "600 V", between: ["HV", "chassis"] },
  { name: "R5", kind: "resistor", marked: "100 kohm 10 W", between: ["HV", "chassis"] },
];
const pair = (volts: number): Parts => [
  { name: "C1", kind: "capacitor", marked: `100 uF ${volts} V electrolytic`, between: ["HV", "mid"] },
  { name: "C2", kind: "capacitor", marked: `100 uF ${volts} V electrolytic`, between: ["mid", "chassis"] },
];
const balance = (marked: string): Parts => [
  { name: "R1", kind: "resistor", marked, between: ["HV", "mid"] },
  { name: "R2", kind: "resistor", marked, between: ["mid", "chassis"] },
];
const run = (parts: Parts) => seriesFilterBalance.run(modelOf({ parts: [...source, ...parts] }));

describe("series-filter-balance", () => {
  it("finds ten elevenths of the voltage on one without resistors", () => {
    const [finding] = run(pair(450));
    expect(finding).toMatchObject({ severity: "replace", holds: "full-line", figures: [{ limit: 450 }, {}] });
    expect(finding?.figures[0]?.value).toBeCloseTo((600 * 10) / 11, 3);
    // JAN-C-62: 0.04 * 100 + 0.3 = 4.3 mA; (2 * 450 - 600) V / (4.3 - 0.43) mA = 77.5 kohm; E12 below: 68 kohm.
    expect(finding?.figures[1]?.value).toBeCloseTo(77519, -1);
    expect(finding?.action).toContain("68 kohm");
  });

  it("passes 68 kohm and finds 470 kohm too large", () => {
    const [pass] = run([...pair(450), ...balance("68 kohm 10 W")]);
    expect(pass?.severity).toBe("good");
    // Conductances 1/68k + 0.43 mA/450 V and 1/68k + 4.3 mA/450 V: 600 * 24.26 / (15.66 + 24.26) = 364.6 V.
    expect(pass?.figures[0]?.value).toBeCloseTo(364.6, 0);
    expect(run([...pair(450), ...balance("470 kohm 2 W")])[0]?.severity).toBe("replace");
  });

  it("finds an overloaded balancing resistor", () => {
    // 365^2 / 68k = 1.96 W.
    expect(run([...pair(450), ...balance("68 kohm 1 W")])[0]?.title).toContain("R1");
  });

  it("asks for higher ratings when halves are too much", () => {
    expect(run([...pair(250), ...balance("68 kohm 10 W")])[0]?.action).toContain("higher rating");
  });

  it("does not apply to single capacitors", () => {
    expect(seriesFilterBalance.run(modelOf({ parts: supplyParts() }))).toEqual([]);
  });
});
