/** The stored readings: complete, finite, spread over the kinds, and in agreement with our engine where no fault is in it. */
import { solveSteady } from "@underchassis/calc";
import { loadDataset } from "@underchassis/dataset/load";
import { describe, expect, it } from "vitest";
import { CHASSIS_IDS, halfOf, readChassis } from "../chassisFiles.ts";
import { SEEDED_KINDS } from "../faults/seededFault.ts";
import { type CaseFile, readCaseFile } from "./caseFile.ts";
import { CaseMaker } from "./caseMaker.ts";

const files = CHASSIS_IDS.map((id) => [id, readCaseFile(id)] as const);
const present = files.flatMap(([, file]) => (file === undefined ? [] : [file]));
const dataset = loadDataset();

describe("the benchmark", () => {
  it("has its readings, in two halves of chassis", () => {
    expect(files.filter(([, file]) => file === undefined).map(([id]) => id)).toEqual([]);
    const halves = CHASSIS_IDS.map(halfOf);
    expect(CHASSIS_IDS.length).toBeGreaterThanOrEqual(14);
    expect(halves.filter((half) => half === "tune").length).toBe(halves.filter((half) => half === "report").length);
  });

  it("has every kind of fault in both halves, most of them to be seen, and five hundred healthy chassis", () => {
    for (const half of ["tune", "report"] as const) {
      const kinds = present.filter(({ chassis }) => halfOf(chassis) === half).flatMap(({ cases }) => cases.flatMap(({ faults }) => faults));
      expect(SEEDED_KINDS.filter((kind) => !kinds.some((fault) => fault.kind === kind))).toEqual([]);
    }
    const cases = present.flatMap((file) => file.cases);
    expect(cases.filter(({ detectable }) => detectable).length / cases.length).toBeGreaterThan(0.75);
    expect(present.flatMap(({ healthy }) => healthy).length).toBeGreaterThanOrEqual(500);
  });
});

describe.each(present.map((file) => [file.chassis, file] as const))("%s", (id, file) => {
  it("has forty single faults, finite figures, and its first readings among its points", () => {
    expect(file.cases.filter(({ faults }) => faults.length === 1).length).toBeGreaterThanOrEqual(40);
    for (const { operating, cold } of [file.nominal, ...file.healthy, ...file.cases]) {
      for (const list of [operating.volts, operating.ripple, operating.sourceOhms]) {
        expect(list.length).toBe(file.points.length);
        expect(list.every(Number.isFinite)).toBe(true);
      }
      expect(cold.length).toBe(file.pairs.length);
    }
    const { play } = readChassis(id);
    expect([...play.dc, ...play.ripple].filter((point) => !file.points.includes(point))).toEqual([]);
    expect([play.dc.length, play.ripple.length]).toEqual([5, 2]);
  });

  // Half a percent: finer than a bench meter. A point with alternating volts is judged by these, as a meter's DC range would be.
  it.each(["operating", "tubes-out"] as const)("agrees with the engine when healthy, %s", (condition) => {
    const stored = file.nominal[condition];
    if (stored === undefined) return;
    expect(worstMean(file, condition)).toBeLessThan(0.005);
  });
});

function worstMean(file: CaseFile, condition: "operating" | "tubes-out"): number {
  const { network } = new CaseMaker(file.chassis, dataset).compiled.get(condition) ?? { network: undefined };
  const stored = file.nominal[condition];
  if (network === undefined || stored === undefined || stored === null) return Number.NaN;
  const { points } = solveSteady(network);
  return Math.max(
    ...file.points.map((point, i) => {
      const [volts, ripple] = [stored.volts[i] ?? Number.NaN, stored.ripple[i] ?? Number.NaN];
      return Math.abs((points.get(point)?.meanVolts ?? 0) - volts) / Math.max(1, Math.abs(volts), 0.02 * ripple);
    }),
  );
}
