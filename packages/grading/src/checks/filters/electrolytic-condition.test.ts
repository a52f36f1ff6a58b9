import { describe, expect, it } from "vitest";
import { modelOf } from "../../testing/model.ts";
import { supplyParts } from "../../testing/supply.ts";
import { electrolyticCondition } from "./electrolytic-condition.ts";

type Changes = NonNullable<Parameters<typeof supplyParts>[0]>;
const run = (c1: NonNullable<Changes[string]>) => electrolyticCondition.run(modelOf({ parts: supplyParts({ C1: c1, C2: null }) }))[0];

describe("electrolytic-condition", () => {
  it("holds leakage against JAN-C-62: 20 uF 450 V 1.1 mA", () => {
    const bad = run({ measured: { leakage: "1.5 mA", atVolts: "450 V" } });
    expect(bad).toMatchObject({ severity: "replace", holds: "full-line" });
    expect(bad?.figures[0]?.limit).toBeCloseTo(1.1e-3, 9);
    // R = 450 V / 5 mA = 90 kohm.
    expect(bad?.action).toContain("90 kohm");
    expect(run({ measured: { leakage: "1.0 mA", atVolts: "450 V" } })?.severity).toBe("good");
  });

  it("holds back an original of 1950 whose leakage nobody measured, even if its capacitance is right", () => {
    expect(run({})).toMatchObject({ severity: "replace", holds: "full-line" });
    expect(run({ measured: { value: "21 uF" } })?.title).toContain("nobody has measured");
  });

  it("finds lost capacity below 80 % and series resistance above three times the table", () => {
    expect(run({ measured: { value: "15 uF", leakage: "0.2 mA" } })?.title).toContain("capacitance");
    expect(run({ measured: { value: "16.5 uF", leakage: "0.2 mA" } })?.severity).toBe("good");
    // esr-guide: 22 uF 250 V 2.9 ohm; for 20 uF 3.19 ohm; limit 9.57 ohm.
    const esr = run({ measured: { esr: "12 ohm", leakage: "0.2 mA" } });
    expect(esr?.title).toContain("series resistance");
    expect(esr?.figures.find(({ unit }) => unit === "ohm")?.limit).toBeCloseTo(9.57, 2);
    expect(run({ measured: { esr: "8 ohm", leakage: "0.2 mA" } })?.severity).toBe("good");
  });

  it("forbids power with a shorted one", () => {
    expect(run({ measured: { condition: "shorted" } })).toMatchObject({ severity: "danger", holds: "current-limited" });
  });

  it("does not apply to a new part that nobody measured, nor to film", () => {
    expect(run({ fitted: "22 uF 450 V" })).toBeUndefined();
    expect(run({ marked: "20 uF 600 V film" })).toBeUndefined();
  });
});
