import { describe, expect, it } from "vitest";
import { modelOf } from "../../testing/model.ts";
import { universalParts } from "../../testing/supply.ts";
import { seleniumRectifier } from "./selenium-rectifier.ts";

const run = (v1: Parameters<typeof universalParts>[0]) =>
  seleniumRectifier.run(modelOf({ parts: universalParts(v1), reference: "B-", chassis: { isolation: "transformerless" } }));
const stack = { type: "selenium 130 V 65 mA", pins: { a: "plate", b: "B+1" } };

describe("selenium-rectifier", () => {
  it("names the stack, its drop and the silicon with resistor in its place", () => {
    const [finding] = run({ V1: stack });
    expect(finding).toMatchObject({ severity: "watch", part: "V1" });
    // Reference 10.4: 5 to 6 V for a radio stack of 5 plates at its rated current; the pulses are several times the mean current.
    expect(finding?.figures[0]?.value ?? 0).toBeGreaterThan(4);
    expect(finding?.figures[0]?.value ?? 0).toBeLessThan(15);
    expect(finding?.action).toMatch(/silicon of 1000 V 1 A with \d+ ohm/);
    expect(finding?.cautions).toContain("selenium-fumes");
  });

  it("forbids power on a shorted one", () => {
    expect(run({ V1: { ...stack, measured: { condition: "shorted" } } })[0]).toMatchObject({
      severity: "danger",
      holds: "current-limited",
    });
  });

  it("does not apply to tubes, nor to a stack that silicon has replaced", () => {
    expect(run({})).toEqual([]);
    expect(run({ V1: { ...stack, fitted: { type: "silicon 1000 V 1 A" } } })).toEqual([]);
  });
});
