import { describe, expect, it } from "vitest";
import { modelOf, type TestJob } from "../../testing/model.ts";
import { publishedAgainstComputed } from "./published-against-computed.ts";

/** 300 V over two resistors of 1 Mohm: 150 V; with a meter of 250 kohm across the lower one 300 * 0.2 / 1.2 = 50 V. */
const parts: TestJob["parts"] = [
  { name: "BT", kind: "battery", between: ["B+", "chassis"], marked: "300 V" },
  { name: "R1", kind: "resistor", between: ["B+", "a"], marked: "1 Mohm 5% 1 W" },
  { name: "R2", kind: "resistor", between: ["a", "chassis"], marked: "1 Mohm 5% 1 W", measured: { value: "3 Mohm" } },
];
const run = (published: string | undefined, value = "140 V") =>
  publishedAgainstComputed.run(
    modelOf({ parts, readings: [{ at: "a", quantity: "dc-volts", value, ...(published === undefined ? {} : { published }) }] }),
  );

describe("published-against-computed", () => {
  it("judges the design, not what was measured in this chassis: R2 has drifted to 3 Mohm", () =>
    expect(run("140 to 160 V", "210 V")).toEqual([]));
  it("finds papers that the maker's own parts contradict", () => {
    const [finding] = run("220 to 240 V");
    expect(finding).toMatchObject({ severity: "watch", life: "designed", point: "a" });
    expect(finding?.figures[0]?.value).toBeCloseTo(150, 3);
    expect(finding?.figures[1]?.value).toBeCloseTo(150 / 230, 3);
    expect(finding?.why).toContain("a winding voltage, a tube or a resistor");
  });
  it("sees that the papers were read with a meter of 1 kohm/V on 250 V", () => {
    const [finding] = run("45 to 55 V");
    expect(finding?.why).toContain("1 kohm/V on its 250 V range");
    expect(finding?.figures[2]?.value).toBeCloseTo(50, 1);
  });
  it("takes a published 0 V for 0.1 V either way, as at a grid", () => {
    expect(run("0 V")[0]?.figures[0]).toMatchObject({ unit: "V" });
    const grid = {
      parts: [
        ...(parts ?? []),
        { name: "C1", kind: "capacitor" as const, between: ["a", "grid"] as [string, string], marked: "0.02 uF 400 V" },
        { name: "R3", kind: "resistor" as const, between: ["grid", "chassis"] as [string, string], marked: "1 Mohm" },
      ],
    };
    expect(
      publishedAgainstComputed.run(modelOf({ ...grid, readings: [{ at: "grid", quantity: "dc-volts", value: "1 V", published: "0 V" }] })),
    ).toEqual([]);
  });
  it("says so once a point", () => {
    const reading = { at: "a", quantity: "dc-volts" as const, published: "220 to 240 V" };
    expect(
      publishedAgainstComputed.run(
        modelOf({
          parts,
          readings: [
            { ...reading, value: "1 V" },
            { ...reading, value: "2 V", life: "restored" },
          ],
        }),
      ),
    ).toHaveLength(1);
  });
  it("does not apply without papers", () => expect(run(undefined)).toEqual([]));
});
