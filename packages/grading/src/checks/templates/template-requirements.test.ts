import type { Dataset, StageTemplate } from "@underchassis/dataset";
import { describe, expect, it } from "vitest";
import { modelOf, type TestJob } from "../../testing/model.ts";
import { smallDataset } from "../../testing/smallDataset.ts";
import { templateRequirements } from "./template-requirements.ts";

type Requirement = StageTemplate["requirements"][number];

/** A battery-fed divider as a stage: 10 k over 10 k, so that every figure can be checked by hand. */
function dividerDataset(...requirements: (Partial<Requirement> & { formula: string })[]): Dataset {
  const template = {
    schemaVersion: 1,
    id: "divider",
    title: "Divider",
    family: "supply",
    summary: "Two resistors across a supply, for tests of the rules.",
    terminals: [
      { id: "supply", meaning: "Supply." },
      { id: "return", meaning: "Return.", default: "chassis" },
    ],
    points: { tap: "Tap." },
    parts: [
      { role: "upper", title: "Upper", kind: "resistor", between: ["supply", "tap"], typical: "10 kohm 2 W" },
      { role: "lower", title: "Lower", kind: "resistor", between: ["tap", "return"], typical: "10 kohm 2 W" },
      { role: "bypass", title: "Bypass", kind: "capacitor", between: ["tap", "return"], typical: "10 uF", optional: true },
    ],
    expected: [],
    requirements: requirements.map((requirement) => ({
      id: "rule",
      title: "The tap stands high enough",
      otherwise: "The tap is too low.",
      severity: "adjust",
      source: "common-practice",
      ...requirement,
    })),
    cautions: ["high-voltage-stored-charge"],
    sources: ["common-practice"],
  } as unknown as StageTemplate;
  return { ...smallDataset(), stages: new Map([["divider", template]]) };
}

type StateOf = NonNullable<NonNullable<TestJob["stages"]>[number]["parts"]>;

function run(parts: StateOf, ...requirements: (Partial<Requirement> & { formula: string })[]) {
  const job: TestJob = {
    stages: [{ id: "d1", template: "divider", bind: { supply: "B+" }, parts }],
    parts: [{ name: "BT", kind: "battery", between: ["B+", "chassis"], marked: "300 V" }],
  };
  return templateRequirements.run(modelOf(job, dividerDataset(...requirements)));
}

const tapAbove = { formula: 'volts("tap") >= 0.4 * volts("supply")' };

describe("template-requirements", () => {
  it("finds a rule that is broken and shows both sides: 300 V over 30 k and 10 k gives 75 V (Ohm's law)", () => {
    const [finding] = run({ upper: { marked: "30 kohm 2 W" } }, tapAbove);
    expect(finding).toMatchObject({ severity: "adjust", stage: "d1", why: "The tap is too low.", sources: ["common-practice"] });
    expect(finding?.found).toBe("voltage at d1:tap: 75 V");
    expect(finding?.shouldBe).toContain("at least 120 V");
    expect(finding?.figures[0]).toMatchObject({ limit: 120, limitKind: "minimum", unit: "V" });
    expect(finding?.figures[0]?.value).toBeCloseTo(75, 6);
    expect(finding?.figures[0]?.margin).toBeCloseTo(-0.375, 6);
    expect(finding?.holds).toBeUndefined();
  });

  it("passes one that only just holds: 300 V over 14.9 k and 10 k gives 120.5 V", () => {
    const findings = run({ upper: { marked: "14.9 kohm 2 W" } }, tapAbove);
    expect(findings.map(({ severity }) => severity)).toEqual(["good"]);
  });

  it("holds back power where the rule calls it danger, and full line where a part must go", () => {
    const low = { upper: { marked: "30 kohm 2 W" } };
    expect(run(low, { ...tapAbove, severity: "danger" })[0]).toMatchObject({ severity: "danger", holds: "current-limited" });
    expect(run(low, { ...tapAbove, severity: "replace" })[0]).toMatchObject({ severity: "replace", holds: "full-line" });
  });

  it("says nothing about a part that the chassis does not have", () => {
    expect(run({}, { formula: "bypass.farads >= 1" })).toEqual([]);
    expect(run({}, { formula: "bypass.present == 0" })[0]?.severity).toBe("good");
  });

  it("names what is missing: a rating that nobody wrote down", () => {
    const [finding] = run({ bypass: { marked: "10 uF" } }, { formula: 'bypass.ratedVolts >= volts("tap")' });
    expect(finding).toMatchObject({ severity: "unmeasured", found: "not known: d1.bypass rated volts" });
  });

  it("reads part properties in SI: P = V^2 / R, 150 V on 10 k is 2.25 W", () => {
    const [finding] = run({}, { formula: "lower.ratedWatts >= lower.watts and lower.ohms == 10000 and lower.meanAmps < 1" });
    expect(finding).toMatchObject({ severity: "adjust", part: "d1.lower" });
    expect(finding?.figures).toHaveLength(1);
    expect(finding?.figures[0]).toMatchObject({ value: 2, unit: "W" });
    expect(finding?.figures[0]?.limit).toBeCloseTo(2.25, 6);
  });

  it("reports a formula of the dataset that cannot be read", () => {
    expect(run({}, { formula: 'require("fs") > 1' })[0]).toMatchObject({
      severity: "unmeasured",
      title: expect.stringContaining("cannot be read") as string,
    });
  });

  it("judges a plan only where it changes something", () => {
    const planned = { upper: { marked: "10 kohm 2 W", fitted: { marked: "30 kohm 2 W", planned: true } } };
    const findings = run(planned, tapAbove, { formula: "lower.ohms == 10000" });
    expect(findings.filter(({ life }) => life === "restored").map(({ severity }) => severity)).toEqual(["good"]);
    expect(findings.filter(({ life }) => life === "planned").map(({ severity }) => severity)).toEqual(["adjust"]);
  });

  it("speaks against the part that the rule is about, where its formula names several", () => {
    const both = { formula: "lower.ohms >= 0.5 * upper.ohms", measures: "lower resistor" };
    expect(run({ upper: { marked: "30 kohm 2 W" } }, both)[0]?.part).toBeUndefined();
    const [finding] = run({ upper: { marked: "30 kohm 2 W", name: "R7" } }, { ...both, about: "upper" });
    expect(finding).toMatchObject({ part: "R7", found: "lower resistor: 10 kohm" });
  });
});
