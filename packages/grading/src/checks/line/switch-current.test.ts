import { describe, expect, it } from "vitest";
import { modelOf } from "../../testing/model.ts";
import { supplyParts } from "../../testing/supply.ts";
import { switchCurrent } from "./switch-current.ts";

const run = (marked: string | undefined, changes: Parameters<typeof supplyParts>[0] = {}) => {
  const parts = supplyParts(changes).map((part) => {
    if (part.name !== "S1") return part;
    const { marked: _, ...rest } = part;
    return marked === undefined ? rest : { ...rest, marked };
  });
  return switchCurrent.run(modelOf({ parts }))[0];
};

describe("switch-current", () => {
  it("passes 3 A contacts on a set that draws well under 1 A", () => {
    const finding = run("3 A 250 V");
    expect(finding?.severity).toBe("good");
    expect(finding?.figures[0]).toMatchObject({ limit: 3 });
  });

  it("finds overloaded contacts and a rating below the line", () => {
    expect(run("0.25 A 250 V")).toMatchObject({ severity: "replace", holds: "full-line" });
    // UL and IEC ratings are for a nominal line: 125 V contacts serve a 120 V line that rises to 126 V.
    expect(run("3 A 125 V")).toMatchObject({ severity: "good" });
    expect(run("3 A 50 V")).toMatchObject({ severity: "replace", title: "S1 is not rated for the line" });
  });

  it("warns of the surge of silicon into empty filters", () => {
    // Half of 200 ohm on the secondary side is about (300 / 120)^2 = 6.25 times the primary's share: 16 + 5 ohm, so 178 V / 21 ohm is some 8 A.
    const changes = { V1: null, T1: {}, C1: { marked: "20 uF 450 V electrolytic" } };
    const parts = supplyParts(changes, [
      { name: "D1", kind: "rectifier", type: "silicon 1000 V 1 A", between: ["plate 1", "B+1"] },
      { name: "D2", kind: "rectifier", type: "silicon 1000 V 1 A", between: ["plate 2", "B+1"] },
    ]).map((part) => (part.name === "S1" ? { ...part, marked: "0.5 A 250 V" } : part));
    const finding = switchCurrent.run(modelOf({ parts }))[0];
    expect(finding?.figures[1]?.value ?? 0).toBeGreaterThan(6);
    expect(finding?.figures[1]?.value ?? 0).toBeLessThan(9);
    expect(finding?.severity).toBe("watch");
  });

  it("asks for an unknown rating, and does not apply without a switch", () => {
    expect(run(undefined)?.severity).toBe("unmeasured");
    expect(run("3 A 250 V", { S1: null, F1: { between: ["fuse in", "primary 1"] } })).toBeUndefined();
  });
});
