import { describe, expect, it } from "vitest";
import { modelOf } from "../../testing/model.ts";
import { supplyParts } from "../../testing/supply.ts";
import { lineFuse } from "./line-fuse.ts";

const run = (parts: ReturnType<typeof supplyParts>) => lineFuse.run(modelOf({ parts }));

describe("line-fuse", () => {
  it("accepts fuse, then switch, in the hot conductor", () => {
    expect(run(supplyParts())).toMatchObject([{ severity: "good", part: "F1" }]);
  });

  it("asks for a fuse where there is none and says which", () => {
    const [finding] = run(supplyParts({ F1: null, S1: { between: ["fuse in", "primary 1"] } }));
    expect(finding).toMatchObject({ severity: "replace", holds: "full-line" });
    // fuse-design-text: 1.5 to 2 times the steady current; a supply that takes 40 to 50 W at 126 V draws 0.4 to 0.6 A.
    expect(finding?.order?.[0]?.what).toMatch(/fuse T (630|800) mA|fuse T 1 A/);
  });

  it("finds the fuse behind the switch and the fuse in the neutral", () => {
    const swapped = run(supplyParts({ F1: { between: ["switch out", "primary 1"] }, S1: { between: ["fuse in", "switch out"] } }));
    expect(swapped).toMatchObject([{ severity: "adjust", title: "F1 comes after the switch" }]);
    const pins = {
      "hot-in": "line hot",
      "hot-out": "fuse in",
      "neutral-in": "line neutral",
      "neutral-out": "n",
      "earth-in": "earth",
      "earth-out": "chassis",
    };
    const neutral = run(supplyParts({ W1: { pins }, F1: { between: ["n", "primary 2"] }, S1: { between: ["fuse in", "primary 1"] } }));
    expect(neutral).toMatchObject([{ severity: "adjust", title: "F1 lies in the neutral conductor" }]);
  });

  it("refuses a fuse below the line's voltage and asks for an unknown one", () => {
    expect(run(supplyParts({ F1: { marked: "1 A 32 V" } }))[0]).toMatchObject({
      severity: "replace",
      holds: "full-line",
      figures: [{ value: 32, limit: 120 }],
    });
    expect(run(supplyParts({ F1: { marked: "1 A slow" } }))[0]?.severity).toBe("unmeasured");
    expect(run(supplyParts({ F1: { marked: "T 1 A 127 V" } }))[0]?.severity).toBe("good");
  });

  it("does not apply without a line side", () => {
    expect(run([{ name: "R1", kind: "resistor", marked: "1 k", between: ["a", "chassis"] }])).toEqual([]);
  });
});
