import { describe, expect, it } from "vitest";
import { modelOf } from "../../testing/model.ts";
import { supplyParts } from "../../testing/supply.ts";
import { bleederRating } from "./bleeder-rating.ts";

const run = (changes = {}) => bleederRating.run(modelOf({ parts: supplyParts(changes) }));

describe("bleeder-rating", () => {
  it("judges the unloaded voltage: about (446 V)^2 / 100 kohm = 2 W in a 5 W part", () => {
    const [finding] = run();
    expect(finding).toMatchObject({ severity: "good", condition: "tubes-out" });
    expect(finding?.figures[0]?.value).toBeGreaterThan(1.8);
    expect(finding?.figures[0]?.value).toBeLessThan(2.2);
    // Loaded: about 330 V / 100 kohm = 3.3 mA of 63 mA.
    expect(finding?.figures[1]?.value).toBeGreaterThan(0.04);
    expect(finding?.figures[1]?.value).toBeLessThan(0.065);
  });
  it("finds one that runs hot and one that is overloaded", () => {
    expect(run({ R1: { marked: "100 kohm 3 W" } })[0]).toMatchObject({ severity: "watch" });
    expect(run({ R1: { marked: "100 kohm 1 W" } })[0]).toMatchObject({ severity: "replace", holds: "full-line" });
  });
  it("asks for an unknown wattage", () => expect(run({ R1: { marked: "100 kohm" } })[0]).toMatchObject({ severity: "unmeasured" }));
  it("does not apply without a bleeder", () => expect(run({ R1: null })).toEqual([]));
});
