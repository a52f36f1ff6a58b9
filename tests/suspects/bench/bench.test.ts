import { loadDataset } from "@underchassis/dataset/load";
import { describe, expect, it } from "vitest";
import { readCaseFile } from "../cases/caseFile.ts";
import { CHASSIS_IDS, modelOfJob, readChassis } from "../chassisFiles.ts";
import { isHit } from "./hit.ts";
import { lookUp } from "./lookUp.ts";
import { type Played, playCase, type Report } from "./playCase.ts";
import { scoreCase } from "./scoreCase.ts";
import { summarise } from "./summary.ts";

type Suspect = Report["suspects"][number];
const suspect = (rank: number, posterior: number, fault: object, group: object[] = []): Suspect =>
  ({
    rank,
    posterior,
    prior: 0.01,
    title: "",
    fault,
    readings: [],
    group: group.map((member) => ({ title: "", fault: member, posterior: 0 })),
    confirm: "",
    cautions: [],
  }) as unknown as Suspect;
const played = (suspects: Suspect[], verdict: Report["verdict"] = "suspects"): Played => {
  const report: Report = { verdict, healthy: 0, noneOfThese: 0, suspects, hypotheses: 10, unexplained: [] };
  return { report, first: report, readings: [], measurements: 1, cost: 2, unanswered: false, searches: 2, cpuSeconds: 1, hypotheses: 20 };
};

describe("a hit", () => {
  it("is the same part and the same kind", () => {
    expect(isHit({ kind: "leaky", part: "C1", ohms: 1e4 }, { kind: "leaky", part: "C1" })).toBe(true);
    expect(isHit({ kind: "leaky", part: "C1", ohms: 1e4 }, { kind: "short", part: "C1" })).toBe(false);
    expect(isHit({ kind: "leaky", part: "C1", ohms: 1e4 }, { kind: "leaky", part: "C2" })).toBe(false);
  });

  it("is another name for the same value, within a quarter", () => {
    const drift = { kind: "drift-high", part: "R1", factor: 4 } as const;
    const wrong = (value: number) => ({ kind: "wrong-value", part: "R1", value, nominal: 1000 });
    expect([wrong(4900), wrong(3300), wrong(5200), wrong(3100)].map((named) => isHit(drift, named))).toEqual([true, true, false, false]);
    expect(isHit({ kind: "open", part: "R1" }, wrong(1e6))).toBe(false);
  });

  it("has two points or two parts in either order", () => {
    expect(isHit({ kind: "bridge", part: "a", to: "b" }, { kind: "bridge", part: "b", to: "a" })).toBe(true);
    expect(isHit({ kind: "exchanged", part: "R1", with: "R2" }, { kind: "exchanged", part: "R2", with: "R1" })).toBe(true);
    expect(isHit({ kind: "bridge", part: "a", to: "b" }, { kind: "bridge", part: "b", to: "c" })).toBe(false);
  });
});

describe("a score", () => {
  const faults = [{ kind: "open", part: "R1" } as const];
  const right = { kind: "open", part: "R1" };
  const wrong = { kind: "open", part: "R2" };

  it("shares a tie and does not call it a hit", () => {
    expect(scoreCase({ faults }, played([suspect(1, 0.4, right), suspect(2, 0.4, wrong)]))).toMatchObject({ top1: 0.5, hit: false });
    expect(scoreCase({ faults }, played([suspect(1, 0.5, right), suspect(2, 0.4, wrong)]))).toMatchObject({ top1: 1, hit: true });
  });

  it("keeps the group apart from its speaker", () => {
    const score = scoreCase({ faults }, played([suspect(1, 0.8, wrong, [wrong, right])]));
    expect(score).toMatchObject({ top1: 0, top10: false, groupTop1: true, groupSize: 2 });
  });

  it("is nothing where the search saw nothing", () => {
    expect(scoreCase({ faults }, played([suspect(1, 0.8, right)], "nothing-off"))).toMatchObject({ top1: 0, groupTop10: false });
  });

  it("counts the sure ones that were right", () => {
    const scores = [played([suspect(1, 0.95, right)]), played([suspect(1, 0.95, wrong)]), played([suspect(1, 0.5, wrong)])];
    expect(summarise(scores.map((each) => scoreCase({ faults }, each)))).toMatchObject({ cases: 3, sure: 2, sureRight: 0.5, top1: 1 / 3 });
  });
});

describe("a played case", () => {
  const id = CHASSIS_IDS.find((each) => readCaseFile(each) !== undefined);
  if (id === undefined) throw new Error("no stored readings");
  const file = readCaseFile(id);
  const stored = file?.cases[0];
  if (file === undefined || stored === undefined) throw new Error("no stored cases");
  const { job, play } = readChassis(id);
  const model = modelOfJob(job, loadDataset());

  it("gives the search what it asks for, as a meter shows it, and stops at the limit", () => {
    const asked = { at: file.points[0] ?? "", to: file.reference, quantity: "ohms", condition: "cold" } as const;
    const seen: number[] = [];
    const result = playCase(
      {
        model,
        file,
        play,
        measurements: 2,
        search: (_, { readings = [] }) => {
          seen.push(readings.length);
          const next = { ...asked, bits: 1, predictions: [], cautions: [], why: "" };
          return { verdict: "suspects", healthy: 0, noneOfThese: 0, suspects: [], hypotheses: 5, unexplained: [], next };
        },
      },
      stored,
    );
    expect(seen).toEqual([7, 8, 9]);
    expect(result).toMatchObject({ measurements: 2, cost: 2, searches: 3, hypotheses: 15 });
    const truth = stored.cold[file.pairs.findIndex(([a, b]) => a === asked.at && b === asked.to)] ?? Number.POSITIVE_INFINITY;
    const last = result.readings.at(-1)?.value ?? Number.NaN;
    if (truth < 20e6) expect(Math.abs(last / truth - 1)).toBeLessThan(0.02);
    else expect(last).toBe(Number.POSITIVE_INFINITY);
  });

  it("has no answer for what was not stored", () => {
    expect(lookUp(file, stored, { at: "nowhere", to: file.reference, quantity: "dc-volts", condition: "operating" }, "x")).toBeUndefined();
    expect(
      lookUp(file, stored, { at: file.points[0] ?? "", to: file.reference, quantity: "dc-amps", condition: "operating" }, "x"),
    ).toBeUndefined();
  });

  it("reads the same at every time of asking", () => {
    const asked = { at: file.points[0] ?? "", to: file.reference, quantity: "dc-volts", condition: "operating" };
    expect(lookUp(file, stored, asked, "x")).toBe(lookUp(file, stored, asked, "x"));
    expect(lookUp(file, stored, asked, "x")).not.toBe(lookUp(file, stored, asked, "y"));
  });
});
