import { describe, expect, it } from "vitest";
import { modelOf } from "../../testing/model.ts";
import { supplyParts } from "../../testing/supply.ts";
import { lineDischarge } from "./line-discharge.ts";

type More = Parameters<typeof supplyParts>[1];
const capacitor = (marked: string, between: [string, string] = ["switch in", "primary 2"]) => ({
  name: "C8",
  kind: "capacitor" as const,
  marked,
  tolerance: "0 %",
  between,
});
const resistor = (marked: string) => ({
  name: "R8",
  kind: "resistor" as const,
  marked,
  tolerance: "0 %",
  between: ["fuse in", "primary 2"] as [string, string],
});
const run = (more: More) =>
  lineDischarge.run(
    modelOf({ chassis: { line: { designVolts: "120 V", hertz: 60, highVolts: "120 V" } }, parts: supplyParts({}, more) }),
  )[0];

describe("line-discharge", () => {
  it("finds 0.22 uF without a discharge path", () => {
    const finding = run([capacitor("0.22 uF 275 VAC X2")]);
    expect(finding).toMatchObject({ severity: "adjust", holds: "service" });
    // Table 6.4 of the reference: 120 V, 34 V in 1 s, 0.22 uF: 2.83 Mohm at most.
    expect(finding?.action).toContain("2.83 Mohm");
  });

  it("passes at 2.7 Mohm and fails at 3.3 Mohm: V exp(-t / RC)", () => {
    const pass = run([capacitor("0.22 uF 275 VAC X2"), resistor("2.7 Mohm 0.5 W")]);
    expect(pass?.severity).toBe("good");
    // 169.7 V * exp(-1 / (2.7e6 * 0.22e-6)) = 169.7 * exp(-1.6835) = 31.5 V.
    expect(pass?.figures[0]?.value).toBeCloseTo(31.5, 1);
    expect(run([capacitor("0.22 uF 275 VAC X2"), resistor("3.3 Mohm 0.5 W")])?.severity).toBe("adjust");
  });

  it("does not apply to 0.1 uF, nor behind the switch", () => {
    expect(run([capacitor("0.1 uF 275 VAC X2")])).toBeUndefined();
    expect(run([capacitor("0.22 uF 275 VAC X2", ["primary 1", "primary 2"])])).toBeUndefined();
  });
});
