import { describe, expect, it } from "vitest";
import { modelOf } from "../../testing/model.ts";
import { standbyParts } from "../../testing/standbyJob.ts";
import { supplyParts } from "../../testing/supply.ts";
import { standbySwitchRating } from "./standby-switch-rating.ts";

const run = (marked: string) => {
  const parts = standbyParts(null).map((part) => (part.name === "S2" ? { ...part, marked } : part));
  return standbySwitchRating.run(modelOf({ parts }));
};

describe("standby-switch-rating", () => {
  it("finds a line-voltage switch in the high-voltage line", () => {
    const [finding] = run("3 A 250 V");
    expect(finding).toMatchObject({ severity: "replace", holds: "full-line", part: "S2" });
    expect(finding?.figures[0]).toMatchObject({ limit: 250 });
    expect(finding?.figures[0]?.value).toBeGreaterThan(380);
  });
  it("passes one rated for that direct voltage with nothing to fill behind it", () => {
    const parts = standbyParts(null).filter(({ name }) => name !== "C3");
    const [finding] = standbySwitchRating.run(modelOf({ parts }));
    expect(finding).toMatchObject({ severity: "good" });
    expect(finding?.figures[1]?.value).toBe(0);
  });
  it("warns of a rush far beyond the contacts' rating: V / 1 ohm into an empty 10 uF", () => {
    const [finding] = run("3 A 600 VDC");
    expect(finding).toMatchObject({ severity: "watch" });
    expect(finding?.figures[1]?.value).toBeCloseTo(finding?.figures[0]?.value ?? 0, 3);
  });
  it("warns where the marking does not say DC", () => expect(run("3 A 600 V")[0]).toMatchObject({ severity: "watch" }));
  it("does not apply to the line switch", () => expect(standbySwitchRating.run(modelOf({ parts: supplyParts() }))).toEqual([]));
});
