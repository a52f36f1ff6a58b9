import { describe, expect, it } from "vitest";
import { modelOf } from "../../testing/model.ts";
import { supplyParts, universalParts } from "../../testing/supply.ts";
import { lineCapacitorClass } from "./line-capacitor-class.ts";

const toChassis = (marked: string, volts = "120 V", hertz: 50 | 60 = 60) =>
  lineCapacitorClass.run(
    modelOf({
      chassis: { line: { designVolts: volts, hertz } },
      parts: supplyParts({}, [{ name: "C9", kind: "capacitor", marked, between: ["primary 1", "chassis"] }]),
    }),
  )[0];
const across = (marked: string) =>
  lineCapacitorClass.run(
    modelOf({ parts: supplyParts({}, [{ name: "C8", kind: "capacitor", marked, between: ["primary 1", "primary 2"] }]) }),
  )[0];

describe("line-capacitor-class", () => {
  it("forbids any power with a paper capacitor at the line (1950: unmarked .05 600V is paper, common-practice)", () => {
    expect(toChassis(".05 600V")).toMatchObject({ severity: "danger", holds: "current-limited", part: "C9" });
    expect(across(".1 400V paper")).toMatchObject({ severity: "danger", holds: "current-limited", part: "C8" });
  });

  it("refuses ordinary film, whatever its DC volts, and class X to the chassis (IEC 60384-14)", () => {
    expect(toChassis("0.01 uF 1000 V film")).toMatchObject({ severity: "replace", holds: "full-line" });
    expect(toChassis("10 nF 275 VAC X2")).toMatchObject({ severity: "replace", holds: "full-line" });
  });

  it("accepts class Y to the chassis and class X or Y across the line", () => {
    expect(toChassis("2.2 nF 250 VAC Y2")?.severity).toBe("good");
    expect(across("0.1 uF 275 VAC X2")?.severity).toBe("good");
    expect(across("4.7 nF 250 VAC Y2")?.severity).toBe("good");
  });

  it("refuses class Y4 on 230 V and accepts it on 120 V (IEC 60384-14: below 150 V)", () => {
    expect(toChassis("2.2 nF Y4", "230 V", 50)).toMatchObject({ severity: "replace", holds: "full-line" });
    expect(toChassis("2.2 nF Y4")?.severity).toBe("good");
  });

  it("sees the capacitor between B- and the chassis of a set without a transformer", () => {
    const run = (marked: string) =>
      lineCapacitorClass.run(
        modelOf({ reference: "B-", chassis: { isolation: "transformerless" }, parts: universalParts({ C9: { marked } }) }),
      )[0];
    expect(run("0.1 uF 400 V paper")?.severity).toBe("danger");
    expect(run("0.1 uF 275 VAC X2")?.severity).toBe("watch");
  });

  it("does not apply to capacitors away from the line", () => {
    expect(lineCapacitorClass.run(modelOf({ parts: supplyParts() }))).toEqual([]);
  });
});
