import { describe, expect, it } from "vitest";
import { clearanceOf } from "../clearance/clearance.ts";
import type { Finding } from "../model/index.ts";
import { modelOf } from "../testing/model.ts";
import { datasetWith, templateOf } from "../testing/stageTemplate.ts";
import { nextSteps } from "./nextSteps.ts";

const finding = (action: string, rest: Partial<Finding> = {}): Finding => ({
  check: "x",
  severity: "replace",
  life: "restored",
  title: `about ${action}`,
  found: "",
  shouldBe: "",
  figures: [],
  why: "",
  action,
  cautions: ["high-voltage-stored-charge"],
  sources: [],
  ...rest,
});

/** A supply whose output is 200 V through 10 kohm into 30 kohm: 150 V. */
const template = templateOf({
  id: "out",
  terminals: [
    { id: "supply", meaning: "raw" },
    { id: "b-plus", meaning: "filtered" },
    { id: "return", meaning: "negative", default: "chassis" },
  ],
  parts: [
    { role: "feed", title: "feed", kind: "resistor", between: ["supply", "b-plus"], typical: "10 kohm 5 %" },
    { role: "bleeder", title: "bleeder", kind: "resistor", between: ["b-plus", "return"], typical: "30 kohm 5 %" },
  ],
});
const model = modelOf(
  {
    stages: [{ id: "s", template: "out", bind: { supply: "raw", "b-plus": "B+" } }],
    parts: [{ name: "BT", kind: "battery", marked: "200 V", between: ["raw", "chassis"] }],
  },
  datasetWith(template),
);
const steps = (...findings: Finding[]) => nextSteps(model, findings, clearanceOf(findings));

describe("what to do next", () => {
  it("is what holds the next step, and nothing of what holds a later one", () => {
    const list = steps(
      finding("replace C1", { part: "C1", holds: "full-line" }),
      finding("fit a fuse", { point: "fuse in", holds: "service" }),
    );
    expect(list.map(({ action, step }) => [action.split(":")[0], step])).toEqual([
      ["C1", "full-line"],
      // Current-limited power is open meanwhile.
      [expect.stringContaining("current limiter"), "current-limited"],
    ]);
    expect(list[0]).toMatchObject({ action: "C1: replace C1", why: "about replace C1", cautions: ["high-voltage-stored-charge"] });
  });

  it("says one action once", () => {
    const list = steps(
      finding("lift the lead", { part: "R1", holds: "service" }),
      finding("lift the lead", { part: "R2", holds: "service" }),
    );
    expect(list.filter(({ action }) => action.includes("lift the lead"))).toHaveLength(1);
  });

  it("is no power at all while something forbids even that", () => {
    const list = steps(finding("take the short out", { severity: "danger", part: "C1" }));
    expect(list).toHaveLength(1);
    expect(list[0]?.step).toBe("current-limited");
  });

  it("ends with the step that is open and what the meter should show there", () => {
    const [step, ...rest] = steps(finding("", { severity: "good" }));
    expect(rest).toEqual([]);
    expect(step?.step).toBe("service");
    // 200 V x 30 / 40.
    expect(step?.expect).toMatch(/^B\+ 150 V \(1\d\d V to 1\d\d V\)$/);
    expect(step?.cautions.length).toBeGreaterThan(0);
  });
});
