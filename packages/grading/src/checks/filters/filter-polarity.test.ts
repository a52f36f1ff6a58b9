import { describe, expect, it } from "vitest";
import { modelOf } from "../../testing/model.ts";
import { supplyParts } from "../../testing/supply.ts";
import { filterPolarity } from "./filter-polarity.ts";

const run = (parts: ReturnType<typeof supplyParts>) => filterPolarity.run(modelOf({ parts }));

describe("filter-polarity", () => {
  it("finds a capacitor fitted the wrong way round", () => {
    const finding = run(supplyParts({ C2: { fitted: { marked: "22 uF 450 V", between: ["chassis", "B+2"] } } })).find(
      ({ part }) => part === "C2",
    );
    expect(finding).toMatchObject({ severity: "danger", holds: "current-limited" });
    expect(finding?.figures[0]?.value ?? 0).toBeGreaterThan(300);
  });

  it("finds a bias filter with its plus on the negative point", () => {
    const bias = (between: [string, string]) =>
      run([
        { name: "B1", kind: "battery", marked: "50 V", between: ["chassis", "bias"] },
        { name: "R1", kind: "resistor", marked: "10 k", between: ["bias", "chassis"] },
        { name: "C1", kind: "capacitor", marked: "10 uF 100 V electrolytic", between },
      ]);
    expect(bias(["bias", "chassis"])[0]?.severity).toBe("danger");
    expect(bias(["chassis", "bias"])[0]?.severity).toBe("good");
  });

  it("passes the supply as it should be", () => {
    expect(run(supplyParts()).map(({ severity }) => severity)).toEqual(["good", "good"]);
  });

  it("does not apply to film", () => {
    expect(run(supplyParts({ C1: { marked: "10 uF 600 V film" }, C2: { marked: "10 uF 600 V film" } }))).toEqual([]);
  });
});
