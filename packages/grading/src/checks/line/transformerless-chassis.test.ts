import { describe, expect, it } from "vitest";
import { modelOf } from "../../testing/model.ts";
import { supplyParts, universalParts } from "../../testing/supply.ts";
import { transformerlessChassis } from "./transformerless-chassis.ts";

const run = (changes: Parameters<typeof universalParts>[0] = {}, more: Parameters<typeof universalParts>[1] = []) =>
  transformerlessChassis.run(modelOf({ parts: universalParts(changes, more), reference: "B-", chassis: { isolation: "transformerless" } }));
const cord = (marked: string, neutralOut = "B-", hotOut = "switch in") => ({
  W1: {
    marked,
    pins: {
      "hot-in": "line hot",
      "hot-out": hotOut,
      "neutral-in": "line neutral",
      "neutral-out": neutralOut,
      "earth-in": "earth",
      "earth-out": "chassis",
    },
  },
});

describe("transformerless-chassis", () => {
  it("always asks for an isolation transformer, and accepts an isolated chassis on a polarised plug", () => {
    const findings = run();
    expect(findings.map(({ severity }) => severity)).toEqual(["watch", "good"]);
    expect(findings[0]?.shouldBe).toMatch(/isolation transformer of at least \d+ VA/);
    expect(findings[0]?.cautions).toContain("transformerless-live-chassis");
  });

  it("finds a chassis wired to B-, and one on the hot side", () => {
    const joined = run(cord("2-wire cord"), [{ name: "X1", kind: "wire", between: ["B-", "chassis"] }]);
    expect(joined.at(-1)).toMatchObject({ severity: "danger", holds: "full-line", point: "chassis" });
    const hot = run({}, [{ name: "X1", kind: "wire", between: ["line 1", "chassis"] }]);
    expect(hot.at(-1)).toMatchObject({ severity: "danger", holds: "current-limited" });
  });

  it("leaves a chassis on the neutral by a polarised plug to care, unless the switch is in the neutral", () => {
    const wire = { name: "X1", kind: "wire" as const, between: ["B-", "chassis"] as [string, string] };
    expect(run({}, [wire]).at(-1)).toMatchObject({ severity: "watch", point: "chassis" });
    const switched = run({ ...cord("2-wire polarized cord", "neutral in", "line 1"), S1: { between: ["neutral in", "B-"] } }, [wire]);
    expect(switched.at(-1)).toMatchObject({ severity: "danger", holds: "full-line" });
  });

  it("finds an earth conductor on a live chassis, but not on an isolated one", () => {
    const shorted = run(cord("3-wire cord"), [{ name: "X1", kind: "wire", between: ["B-", "chassis"] }]);
    expect(shorted.map(({ title }) => title)).toContain("The earth conductor of W1 is on a conductor of the line");
    expect(run(cord("3-wire polarized cord")).some(({ severity }) => severity === "danger")).toBe(false);
  });

  it("asks for a polarised plug and for enough resistance to the chassis", () => {
    expect(run(cord("2-wire cord"))[1]).toMatchObject({ severity: "replace", holds: "service" });
    expect(run({ R9: { marked: "10 kohm 1 W" } }).at(-1)).toMatchObject({ severity: "danger", figures: [{ value: 10e3, limit: 150e3 }] });
    expect(run({ R9: { marked: "150 kohm 1 W" } }).at(-1)?.severity).toBe("good");
  });

  it("does not apply to a set with a transformer", () => {
    expect(transformerlessChassis.run(modelOf({ parts: supplyParts() }))).toEqual([]);
  });
});
