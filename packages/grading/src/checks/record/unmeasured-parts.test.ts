import { describe, expect, it } from "vitest";
import type { TestJob } from "../../testing/model.ts";
import { modelOf } from "../../testing/model.ts";
import { datasetWith, templateOf } from "../../testing/stageTemplate.ts";
import { unmeasuredParts } from "./unmeasured-parts.ts";

const template = templateOf({
  id: "filter",
  title: "Filter",
  parts: [
    {
      role: "reservoir",
      title: "Reservoir",
      kind: "capacitor",
      between: ["supply", "return"],
      typical: "20 uF 450 V",
      duty: "filter-input",
      polarised: true,
      measure: ["capacitance", "leakage", "esr"],
    },
    {
      role: "load",
      title: "Load resistor",
      kind: "resistor",
      between: ["supply", "return"],
      typical: "47 kohm 2 W",
      measure: ["resistance"],
    },
  ],
});
type Parts = NonNullable<NonNullable<TestJob["stages"]>[number]["parts"]>;
const run = (parts: Parts) =>
  unmeasuredParts.run(
    modelOf(
      {
        stages: [{ id: "f", template: "filter", bind: { supply: "B+" }, parts }],
        parts: [{ name: "BT", kind: "battery", between: ["B+", "chassis"], marked: "300 V" }],
      },
      datasetWith(template),
    ),
  );
const measuredLoad = { load: { name: "R1", measured: { value: "48k" } } };

describe("unmeasured-parts", () => {
  it("holds full line for an old filter capacitor, handing back for the rest", () => {
    const findings = run({ reservoir: { name: "C1" }, load: { name: "R1" } });
    expect(findings.map(({ severity, holds }) => [severity, holds])).toEqual([
      ["unmeasured", "full-line"],
      ["unmeasured", "service"],
    ]);
    expect(findings[0]?.action).toContain("C1 (capacitance, one lead lifted; leakage at its working voltage, up to 450 V");
    expect(findings[1]?.found).toBe("not measured: R1");
  });
  it("is content with what has been measured, asking for nothing but the rare instrument", () => {
    const findings = run({ reservoir: { name: "C1", measured: { value: "21 uF", leakage: "0.3 mA", atVolts: "400 V" } }, ...measuredLoad });
    expect(findings).toHaveLength(1);
    expect(findings[0]?.holds).toBeUndefined();
    expect(findings[0]?.action).toContain("equivalent series resistance");
    expect(
      run({ reservoir: { measured: { value: "21 uF", leakage: "0.3 mA", atVolts: "400 V", esr: "2 ohm" } }, ...measuredLoad }),
    ).toEqual([]);
  });
  it("does not take the old part's measurement for the new one's, and does not hold for a new part", () => {
    const [finding, ...rest] = run({
      reservoir: { name: "C1", measured: { value: "9 uF", leakage: "9 mA", atVolts: "300 V" }, fitted: "22 uF 450 V" },
      ...measuredLoad,
    });
    expect(rest).toEqual([]);
    expect(finding).toMatchObject({ severity: "unmeasured", title: expect.stringContaining("newly fitted") as string });
    expect(finding?.holds).toBeUndefined();
  });
  it("does not ask for a part that is not there", () => expect(run({ reservoir: { absent: true }, ...measuredLoad })).toEqual([]));
});
