import { describe, expect, it } from "vitest";
import { modelOf } from "../../testing/model.ts";
import { siliconSupply, supplyParts } from "../../testing/supply.ts";
import { seriesDiodes } from "./series-diodes.ts";

type Parts = ReturnType<typeof supplyParts>;
const leg = (n: number, type: string): Parts => [
  { name: `D${n}A`, kind: "rectifier", type, between: [`plate ${n}`, `mid ${n}`] },
  { name: `D${n}B`, kind: "rectifier", type, between: [`mid ${n}`, "B+1"] },
];
const equalisers = (n: number): Parts => [
  { name: `R${n}A`, kind: "resistor", marked: "470 kohm 1 W", between: [`plate ${n}`, `mid ${n}`] },
  { name: `R${n}B`, kind: "resistor", marked: "470 kohm 1 W", between: [`mid ${n}`, "B+1"] },
];
const run = (type: string, more: Parts = []) =>
  seriesDiodes.run(modelOf({ parts: supplyParts({ V1: null }, [...leg(1, type), ...leg(2, type), ...more]) }));

describe("series-diodes", () => {
  it("finds both strings, and too little rating without equalising", () => {
    const findings = run("silicon 600 V 1 A");
    expect(findings.map(({ part }) => part)).toEqual(["D1A", "D2A"]);
    expect(findings[0]).toMatchObject({ severity: "replace", holds: "full-line" });
    // F15: 2.83 times the half winding at the highest line, a little less under load: 850 to 930 V; three quarters of it on one diode.
    expect(findings[0]?.figures[0]?.value ?? 0).toBeGreaterThan(0.75 * 830);
    expect(findings[0]?.figures[0]?.value ?? 0).toBeLessThan(0.75 * 930);
    // 500 ohm per volt of 600 V is 300 kohm; E12 below it 270 kohm.
    expect(findings[0]?.action).toContain("270 kohm");
  });

  it("passes the same diodes with equalising resistors: 55 % of the whole", () => {
    const findings = run("silicon 600 V 1 A", [...equalisers(1), ...equalisers(2)]);
    expect(findings.map(({ severity }) => severity)).toEqual(["good", "good"]);
  });

  it("remarks on unequalised diodes of ample rating", () => {
    expect(run("silicon 1000 V 1 A")[0]?.severity).toBe("watch");
  });

  it("does not take the arms of a bridge for strings: the winding stands on the point between", () => {
    const arm = (name: string, between: [string, string]): Parts[number] => ({
      name,
      kind: "rectifier",
      type: "silicon 1000 V 1 A",
      between,
    });
    const hv = {
      primary: { between: ["primary 1", "primary 2"] as [string, string], marked: "120 V", measured: "5 ohm" },
      hv: { between: ["ac 1", "ac 2"] as [string, string], marked: "250 V 100 mA", measured: "60 ohm" },
    };
    const bridge = [arm("D1", ["ac 1", "B+1"]), arm("D2", ["ac 2", "B+1"]), arm("D3", ["chassis", "ac 1"]), arm("D4", ["chassis", "ac 2"])];
    expect(seriesDiodes.run(modelOf({ parts: supplyParts({ V1: null, T1: { windings: hv } }, bridge) }))).toEqual([]);
  });

  it("does not take the two sides of a full-wave rectifier for a string", () => {
    expect(seriesDiodes.run(modelOf({ parts: siliconSupply("silicon 1000 V 1 A") }))).toEqual([]);
  });
});
