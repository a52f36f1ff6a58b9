import { describe, expect, it } from "vitest";
import { amplifierParts } from "../../testing/audioParts.ts";
import { modelOf } from "../../testing/model.ts";
import { referenceDataset } from "../../testing/referenceDataset.ts";
import { amplifierOperatingPoint } from "./amplifier-operating-point.ts";

const run = (changes = {}) => amplifierOperatingPoint.run(modelOf({ parts: amplifierParts(changes) }, referenceDataset()));

describe("amplifier-operating-point", () => {
  it("passes a 12AX7 with 220 k and 2.2 k", () => {
    const [finding] = run();
    expect(finding).toMatchObject({ severity: "good", part: "V1" });
    // Load line: plate volts = 250 V - Ip * 220 k, with the computed current.
    const share = (250 - (finding?.figures[1]?.value ?? 0) * 220e3) / 250;
    expect(finding?.figures[0]?.value).toBeCloseTo(share, 3);
  });
  it("finds saturation: 2.2 Mohm plate load", () => {
    const [finding] = run({ R1: { marked: "2.2 Mohm 1 W" }, R2: { marked: "10 ohm 1 W" } });
    expect(finding).toMatchObject({ severity: "adjust", holds: "service" });
    expect(finding?.title).toContain("saturated");
  });
  it("finds cut-off: cathode resistor drifted to 100 kohm", () => {
    const [finding] = run({ R2: { marked: "2.2 kohm 0.5 W", measured: { value: "100 kohm" } } });
    expect(finding).toMatchObject({ severity: "adjust" });
    expect(finding?.title).toContain("cut off");
  });
  it("does not apply without a resistor at the plate", () =>
    expect(run({ R1: { kind: "inductor", role: "plateChoke", marked: "100 H 2 kohm" } })).toEqual([]));
});
