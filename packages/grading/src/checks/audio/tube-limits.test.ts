import { describe, expect, it } from "vitest";
import { outputParts } from "../../testing/audioParts.ts";
import { modelOf } from "../../testing/model.ts";
import { referenceDataset } from "../../testing/referenceDataset.ts";
import { tubeLimits } from "./tube-limits.ts";

const run = (changes = {}) => tubeLimits.run(modelOf({ parts: outputParts(changes) }, referenceDataset()));

describe("tube-limits", () => {
  it("passes a 6V6GT at 265 V", () => expect(run().map(({ severity }) => severity)).toEqual(["good"]));
  it("finds 385 V at a screen made for 315 V (6V6GTA, rc-30)", () => {
    const [finding] = run({ BT: { marked: "400 V" }, R1: { marked: "1 kohm 5 W" } });
    expect(finding).toMatchObject({ severity: "adjust", holds: "service", part: "V1" });
    const screen = finding?.figures.find(({ label }) => label.startsWith("screen"));
    expect(screen).toMatchObject({ limit: 315, limitKind: "maximum" });
    expect(screen?.value).toBeGreaterThan(350);
  });
  it("only watches one a little above: 325 V", () =>
    expect(run({ BT: { marked: "345 V" }, R1: { marked: "600 ohm 5 W" } })[0]).toMatchObject({ severity: "watch" }));
  it("holds full line for the insulation between heater and cathode", () => {
    const parts = [
      { name: "BT", kind: "battery" as const, between: ["B+", "chassis"] as [string, string], marked: "250 V" },
      // A cathode follower on 12AX7 with its cathode far up; the table gives 180 V.
      { name: "V1", kind: "tube" as const, type: "12AX7", pins: { plate: "B+", grid: "grid", cathode: "cathode" } },
      { name: "BG", kind: "battery" as const, between: ["grid", "chassis"] as [string, string], marked: "195 V" },
      { name: "R1", kind: "resistor" as const, between: ["cathode", "chassis"] as [string, string], marked: "470 kohm 1 W" },
    ];
    const [finding] = tubeLimits.run(modelOf({ parts }, referenceDataset()));
    expect(finding).toMatchObject({ severity: "adjust", holds: "full-line" });
    expect(finding?.figures.find(({ label }) => label.startsWith("heater"))).toMatchObject({ limit: 180 });
  });
  it("does not apply without tubes", () => expect(run({ V1: null })).toEqual([]));
});
