import { describe, expect, it } from "vitest";
import { modelOf } from "../../testing/model.ts";
import { supplyParts, universalParts } from "../../testing/supply.ts";
import { cordGrounding } from "./cord-grounding.ts";

const twoWire = {
  W1: {
    fitted: "2-wire cord",
    pins: { "hot-in": "line hot", "hot-out": "fuse in", "neutral-in": "line neutral", "neutral-out": "primary 2" },
  },
};
const run = (parts: ReturnType<typeof supplyParts>) => cordGrounding.run(modelOf({ parts }));

describe("cord-grounding", () => {
  it("accepts a three-wire cord bonded to the chassis, and asks to look at an original one", () => {
    expect(run(supplyParts()).map(({ severity }) => severity)).toEqual(["watch", "good"]);
  });

  it("holds back a two-wire cord, and forbids any power with an ordinary capacitor from line to chassis", () => {
    const [plain] = run(supplyParts(twoWire));
    expect(plain).toMatchObject({ severity: "replace", holds: "service" });
    const [bridged] = run(supplyParts(twoWire, [{ name: "C9", kind: "capacitor", marked: ".05 600V", between: ["primary 1", "chassis"] }]));
    expect(bridged).toMatchObject({ severity: "danger", holds: "current-limited" });
    expect(bridged?.title).toContain("C9");
  });

  it("does not take a class Y capacitor for a danger", () => {
    const [finding] = run(
      supplyParts(twoWire, [{ name: "C9", kind: "capacitor", marked: "2.2 nF 250 VAC Y2", between: ["primary 1", "chassis"] }]),
    );
    expect(finding?.severity).toBe("replace");
  });

  it("finds an earth conductor that ends on the wrong point", () => {
    const pins = {
      "hot-in": "line hot",
      "hot-out": "fuse in",
      "neutral-in": "line neutral",
      "neutral-out": "primary 2",
      "earth-in": "earth",
      "earth-out": "tag 3",
    };
    expect(run(supplyParts({ W1: { pins } })).at(-1)).toMatchObject({ severity: "replace", found: "earth conductor on tag 3" });
  });

  it("cannot judge a cord that nobody described", () => {
    expect(run(supplyParts({ F1: { between: ["line hot", "switch in"] }, W1: null }))).toMatchObject([
      { severity: "unmeasured", holds: "service" },
    ]);
  });

  it("does not apply to a set without a transformer, or without a line side", () => {
    expect(cordGrounding.run(modelOf({ parts: universalParts(), reference: "B-", chassis: { isolation: "transformerless" } }))).toEqual([]);
    expect(cordGrounding.run(modelOf({ parts: [{ name: "R1", kind: "resistor", marked: "1 k", between: ["a", "chassis"] }] }))).toEqual([]);
  });
});
