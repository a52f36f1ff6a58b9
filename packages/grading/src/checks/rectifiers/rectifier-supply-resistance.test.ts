import { describe, expect, it } from "vitest";
import { modelOf } from "../../testing/model.ts";
import { siliconSupply, supplyParts, universalParts } from "../../testing/supply.ts";
import { rectifierSupplyResistance } from "./rectifier-supply-resistance.ts";

const windings = (primary: string | undefined, hv: string | undefined) => ({
  T1: {
    windings: {
      primary: { between: ["primary 1", "primary 2"], marked: "120 V", ...(primary === undefined ? {} : { measured: primary }) },
      hv: { between: ["plate 1", "chassis", "plate 2"], marked: "300-0-300 V 100 mA", ...(hv === undefined ? {} : { measured: hv }) },
      heaters: { between: ["chassis", "heater 2"], marked: "6.3 V", measured: "0.1 ohm" },
    },
  },
});
const run = (parts: ReturnType<typeof supplyParts>) => rectifierSupplyResistance.run(modelOf({ parts }))[0];

describe("rectifier-supply-resistance", () => {
  it("adds half the winding and the reflected primary: 100 + 2.5^2 * 5 = 131.25 ohm", () => {
    const finding = run(supplyParts(windings("5 ohm", "200 ohm")));
    expect(finding).toMatchObject({ severity: "good", figures: [{ limit: 50, limitKind: "minimum" }] });
    expect(finding?.figures[0]?.value).toBeCloseTo(131.25, 6);
  });

  it("finds too little: 20 + 2.5^2 * 1 = 26.25 ohm of 50, and says to add 27 ohm (E12)", () => {
    const finding = run(supplyParts(windings("1 ohm", "40 ohm")));
    expect(finding).toMatchObject({ severity: "adjust", holds: "service" });
    expect(finding?.figures[0]?.value).toBeCloseTo(26.25, 6);
    expect(finding?.action).toContain("27 ohm");
    expect(run(supplyParts(windings("2 ohm", "76 ohm")))?.severity).toBe("good"); // 38 + 12.5 = 50.5 ohm
  });

  it("asks to measure when the guess cannot decide, and judges when it can (6X4: 525 ohm)", () => {
    // Guessed: 4.5 % of 600 V over the rated current, half of it, and 2.5^2 times 5 % of 120 V at 20 W (36 ohm): 225 ohm.
    const guessed = (milliamperes: number) =>
      run(
        supplyParts({
          V1: { type: "6X4" },
          T1: {
            windings: {
              primary: { between: ["primary 1", "primary 2"], marked: "120 V" },
              hv: { between: ["plate 1", "chassis", "plate 2"], marked: `300-0-300 V ${milliamperes} mA` },
            },
          },
        }),
      );
    // 225 + 225 = 450 ohm, 270 to 630 ohm: either side of 525 ohm. 135 + 225 = 360 ohm, 504 ohm at most: too little in any case.
    expect(guessed(60)?.severity).toBe("unmeasured");
    expect(guessed(60)?.figures[0]?.value).toBeCloseTo(450, 6);
    expect(guessed(100)?.severity).toBe("adjust");
  });

  it("takes the surge resistor of a set without a transformer (35W4: 15 ohm)", () => {
    const universal = (marked: string) =>
      rectifierSupplyResistance.run(
        modelOf({ parts: universalParts({ R1: { marked } }), reference: "B-", chassis: { isolation: "transformerless" } }),
      )[0];
    expect(universal("33 ohm 2 W")).toMatchObject({ severity: "good", figures: [{ value: 33, limit: 15 }] });
    expect(universal("10 ohm 2 W")?.severity).toBe("adjust");
  });

  it("does not apply to silicon nor to a choke-input filter", () => {
    expect(run(siliconSupply("silicon 1000 V 1 A"))).toBeUndefined();
    expect(run(supplyParts({ C1: null }))).toBeUndefined();
  });
});
