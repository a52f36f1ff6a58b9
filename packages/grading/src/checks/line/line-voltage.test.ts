import { describe, expect, it } from "vitest";
import { modelOf } from "../../testing/model.ts";
import { supplyParts } from "../../testing/supply.ts";
import { lineVoltage } from "./line-voltage.ts";

const run = (designVolts: string, actualVolts: string, highVolts = actualVolts) =>
  lineVoltage.run(
    modelOf({
      chassis: { line: { designVolts, hertz: 60, actualVolts, highVolts } },
      parts: supplyParts({
        T1: {
          windings: {
            primary: { between: ["primary 1", "primary 2"], marked: designVolts, measured: "5 ohm" },
            hv: { between: ["plate 1", "chassis", "plate 2"], marked: "300-0-300 V 100 mA", measured: "200 ohm" },
            rectifier: { between: ["B+1", "filament 2"], marked: "5 V 2 A", measured: "0.1 ohm" },
          },
        },
      }),
    }),
  )[0];

describe("line-voltage", () => {
  it("finds heaters beyond 10 % and gives remedies in numbers", () => {
    // 125 V on a set for 110 V is 114 %; the drop in the windings is the same share, so the heater follows.
    const finding = run("110 V", "125 V");
    expect(finding).toMatchObject({ severity: "adjust", holds: "service", figures: [{ limit: 1.1 }, {}, { value: 125 / 110 }, {}, {}] });
    expect(finding?.action).toContain("12.6 V");
    const [before, after] = finding?.figures.slice(3).map(({ value }) => value ?? 0) ?? [];
    // B+ follows the line, a little less for the rectifier's drop: 10 to 17 %.
    expect((after ?? 0) / (before ?? 1)).toBeGreaterThan(1.1);
    expect((after ?? 0) / (before ?? 1)).toBeLessThan(1.17);
  });

  it("remarks on 127 V for a 117 V set and passes 118 V", () => {
    expect(run("117 V", "127 V")?.severity).toBe("watch");
    expect(run("117 V", "118 V")?.severity).toBe("good");
  });

  it("finds starved heaters", () => {
    expect(run("120 V", "104 V")).toMatchObject({ severity: "adjust", title: "Heaters run below their limit" });
  });

  it("does not apply to a job without its line", () => {
    expect(lineVoltage.run(modelOf({ parts: [{ name: "R1", kind: "resistor", marked: "1 k", between: ["a", "chassis"] }] }))).toEqual([]);
  });
});
