import { describe, expect, it } from "vitest";
import { modelOf } from "../../testing/model.ts";
import { standbyParts } from "../../testing/standbyJob.ts";
import { standbyBypassResistor } from "./standby-bypass-resistor.ts";

const run = (bypass: object | null) => standbyBypassResistor.run(modelOf({ parts: standbyParts(bypass) }));

describe("standby-bypass-resistor", () => {
  it("finds 5 kohm 1 W that runs hot in standby: about (430 V / 35 kohm)^2 * 5 kohm", () => {
    const [finding, live] = run({ marked: "5 kohm 1 W" });
    expect(finding).toMatchObject({ severity: "watch", part: "R2", condition: "standby" });
    const supply = Number(/\((\d+(?:\.\d+)?) V\)/.exec(finding?.figures[1]?.how ?? "")?.[1]);
    expect(supply).toBeGreaterThan(380);
    // Divider of 5 k and 30 k: P = (V / 35 k)^2 * 5 k.
    expect(finding?.figures[0]?.value).toBeCloseTo((supply / 35e3) ** 2 * 5e3, 1);
    // C V^2 / 2 of 10 uF at V * 30/35.
    expect(finding?.figures[2]?.value).toBeCloseTo(0.5 * 10e-6 * ((supply * 30) / 35) ** 2, 1);
    expect(live).toMatchObject({ severity: "watch", point: "B+ load", cautions: ["standby-live", "high-voltage-stored-charge"] });
  });
  it("calls it dangerous at more than twice its rating, with the trickle value to fit", () => {
    const [finding] = run({ marked: "5 kohm 0.25 W" });
    expect(finding).toMatchObject({ severity: "danger", holds: "full-line" });
  });
  it("passes 100 kohm 5 W and still says what stays live", () => {
    const findings = run({ marked: "100 kohm 5 W" });
    expect(findings.map(({ severity }) => severity)).toEqual(["good", "watch"]);
    // 430 V * 30 / 130.
    expect(findings[1]?.figures[0]?.value).toBeGreaterThan(85);
    expect(findings[1]?.figures[0]?.value).toBeLessThan(110);
  });
  it("asks for an unknown wattage", () =>
    expect(run({ marked: "100 kohm" })[0]).toMatchObject({ severity: "unmeasured", holds: "full-line" }));
  it("does not apply without a resistor across the switch", () => expect(run(null)).toEqual([]));
});
