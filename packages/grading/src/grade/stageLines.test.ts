import type { JobPart } from "@underchassis/dataset";
import { describe, expect, it } from "vitest";
import type { Finding, Severity } from "../model/index.ts";
import { modelOf } from "../testing/model.ts";
import { datasetWith, templateOf } from "../testing/stageTemplate.ts";
import { expectedLines } from "./expectedLines.ts";
import { stageLines } from "./stageLines.ts";

const template = templateOf({
  id: "drop",
  title: "Dropper",
  terminals: [
    { id: "supply", meaning: "raw" },
    { id: "out", meaning: "dropped" },
    { id: "return", meaning: "negative", default: "chassis" },
  ],
  parts: [
    { role: "upper", title: "upper", kind: "resistor", between: ["supply", "out"], typical: "10 kohm 1 W", measure: ["resistance"] },
    { role: "lower", title: "lower", kind: "resistor", between: ["out", "return"], typical: "30 kohm 2 W", measure: ["resistance"] },
  ],
});
const battery: JobPart = { name: "BT", kind: "battery", marked: "200 V", tolerance: "1 %", between: ["raw", "chassis"] };
const model = modelOf(
  {
    stages: [
      {
        id: "s",
        template: "drop",
        bind: { supply: "raw", out: "mid" },
        parts: { lower: { name: "R2", marked: "30 kohm 5 % 2 W", measured: { value: "30.1 kohm" } } },
      },
    ],
    parts: [battery, { name: "R9", kind: "resistor", marked: "1 Mohm", between: ["raw", "chassis"], removed: true }],
    readings: [{ at: "mid", quantity: "dc-volts", value: "149 V", life: "restored" }],
  },
  datasetWith(template),
);
const finding = (severity: Severity, rest: Partial<Finding>): Finding => ({
  check: "x",
  severity,
  life: "restored",
  title: "",
  found: "",
  shouldBe: "",
  figures: [],
  why: "",
  action: "",
  cautions: [],
  sources: [],
  ...rest,
});

describe("stage lines", () => {
  const findings = [
    finding("danger", { part: "R2", stage: "s" }),
    finding("good", { part: "R2", stage: "s" }),
    finding("watch", { part: "BT" }),
    finding("replace", { part: "R2", stage: "s", life: "planned" }),
  ];
  const lines = stageLines(model, findings);
  const part = (id: string) => lines.flatMap(({ parts }) => parts).find((line) => line.id === id)!;

  it("are the stages, and last what belongs to none", () => {
    expect(lines.map(({ id, title, parts }) => [id, title, parts.map(({ id: name }) => name)])).toEqual([
      ["s", "Dropper", ["s.upper", "R2"]],
      ["chassis", "The rest of the chassis", ["BT", "R9"]],
    ]);
  });

  it("name the findings that speak of them", () => {
    expect(lines.map(({ findings: indices }) => indices)).toEqual([[0, 1, 3], [2]]);
  });

  it("give each part the worst that is said of it as it stands", () => {
    expect(part("R2").severity).toBe("danger");
    expect(part("BT").severity).toBe("watch");
    // Nobody measured it, and its template asks for that.
    expect(part("s.upper").severity).toBe("unmeasured");
    expect(part("R9")).toMatchObject({ change: "removed", severity: "good" });
  });

  it("say what a part bears beside what it stands", () => {
    // 200 V over 10 k and 30.1 k: 5 mA, at any line since there is none.
    const amps = 200 / 40.1e3;
    expect(part("R2").watts).toBeCloseTo(amps ** 2 * 30.1e3, 4);
    expect(part("R2")).toMatchObject({ ratedWatts: 2, between: "mid - chassis", measured: "30.1 kohm" });
    expect(part("R2").maxVolts).toBeCloseTo(amps * 30.1e3, 3);
    expect(part("s.upper").typical).toBe(true);
    expect(part("R2").typical).toBeUndefined();
  });
});

describe("expected lines", () => {
  const lines = expectedLines(model);

  it("give each main point once, since every powered condition is the same network here", () => {
    expect(lines.map(({ point, condition }) => [point, condition])).toEqual([
      ["raw", "tubes-out"],
      ["mid", "tubes-out"],
    ]);
  });

  it("give value and window, and the ripple that a battery does not have", () => {
    const mid = lines.find(({ point }) => point === "mid")!;
    expect(mid.nominal).toBeCloseTo((200 * 30.1) / 40.1, 3);
    expect(mid.low).toBeLessThan(mid.nominal);
    expect(mid.high).toBeGreaterThan(mid.nominal);
    expect(mid.ripple).toBeCloseTo(0, 9);
    expect(mid.stage).toBe("s");
  });
});
