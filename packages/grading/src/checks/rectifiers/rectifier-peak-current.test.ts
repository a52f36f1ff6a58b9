import { describe, expect, it } from "vitest";
import { modelOf } from "../../testing/model.ts";
import { siliconSupply, supplyParts } from "../../testing/supply.ts";
import { rectifierPeakCurrent } from "./rectifier-peak-current.ts";

const run = (parts: ReturnType<typeof supplyParts>) => rectifierPeakCurrent.run(modelOf({ parts }));
const windings = (ohms: string) => ({
  primary: { between: ["primary 1", "primary 2"] as [string, string], marked: "120 V", measured: "0.5 ohm" },
  hv: { between: ["plate 1", "chassis", "plate 2"], marked: "300-0-300 V", measured: ohms },
  filament: { between: ["B+1", "filament 2"] as [string, string], marked: "5 V", measured: "0.1 ohm" },
});

describe("rectifier-peak-current", () => {
  it("passes the pulses of a normal supply: 3 to 6 times the direct current (common-practice)", () => {
    const finding = run(supplyParts())[0];
    expect(finding).toMatchObject({ severity: "good", figures: [{ limit: 0.4 }] });
    expect(finding?.figures[0]?.value ?? 0).toBeGreaterThan(3 * 0.0635);
    expect(finding?.figures[0]?.value ?? 0).toBeLessThan(6 * 0.0635);
  });

  it("finds a huge capacitor on a stiff winding", () => {
    const finding = run(
      supplyParts({ T1: { windings: windings("5 ohm") }, C1: { marked: "220 uF 500 V electrolytic" }, LOAD: { marked: "120 mA" } }),
    )[0];
    expect(finding).toMatchObject({ severity: "replace", holds: "full-line" });
  });

  it("judges the plan when only the capacitor is planned", () => {
    const lives = run(supplyParts({ C1: { fitted: { marked: "100 uF 450 V", planned: true } } })).map(({ life }) => life);
    expect(lives).toEqual(["restored", "planned"]);
  });

  it("does not apply where no limit is published", () => {
    expect(run(siliconSupply("silicon 1000 V 1 A"))).toEqual([]);
  });
});
