import type { JobPart } from "@underchassis/dataset";
import { describe, expect, it } from "vitest";
import { modelOf } from "../../testing/model.ts";
import { supplyParts } from "../../testing/supply.ts";
import { paperCapacitorCondition } from "./paper-capacitor-condition.ts";

const run = (part: Partial<JobPart>) =>
  paperCapacitorCondition.run(
    modelOf({
      parts: supplyParts({}, [
        { name: "C7", kind: "capacitor", marked: ".05 600V", between: ["B+2", "grid"], ...part },
        { name: "RG", kind: "resistor", role: "gridLeak", marked: "470 kohm", between: ["grid", "chassis"] },
      ]),
    }),
  )[0];

describe("paper-capacitor-condition", () => {
  it("replaces paper in a coupling position on sight, and shows the shift: 300 V, 470 k, 280 Mohm give 0.5 V (F10)", () => {
    expect(run({ role: "coupling" })).toMatchObject({ severity: "replace", holds: "full-line" });
    const leaky = run({ role: "coupling", measured: { leakage: "280 Mohm" } });
    const shift = leaky?.figures[0]?.value ?? 0;
    // Scaled to the voltage that it meets here, some 340 to 450 V.
    expect(shift).toBeGreaterThan(0.55);
    expect(shift).toBeLessThan(0.78);
    expect(leaky?.action).toContain("630 V");
  });

  it("leaves what lies in the line to the check of safety classes", () => {
    expect(run({ between: ["primary 1", "chassis"] })).toBeUndefined();
  });

  it("asks for the leakage of a bypass, refuses 10 Mohm, remarks on 50 Mohm, passes 500 Mohm", () => {
    const bypass = (leakage: string | undefined) =>
      run({ between: ["B+2", "chassis"], ...(leakage === undefined ? {} : { measured: { leakage } }) })?.severity;
    expect(bypass(undefined)).toBe("unmeasured");
    expect(bypass("10 Mohm")).toBe("replace");
    expect(bypass("50 Mohm")).toBe("watch");
    expect(bypass("500 Mohm")).toBe("good");
  });

  it("does not apply once film is fitted, nor to mica", () => {
    expect(run({ role: "coupling", fitted: "0.047 uF 630 V film" })).toBeUndefined();
    expect(run({ marked: "250 pF mica" })).toBeUndefined();
  });
});
