import { describe, expect, it } from "vitest";
import { modelOf } from "../testing/model.ts";
import { groundOf, halfWaveParts, observableAt } from "../testing/suspectChassis.ts";
import type { Fault } from "./fault.ts";
import type { Group } from "./groups.ts";
import type { Judged } from "./judged.ts";
import { Likelihood } from "./likelihood.ts";
import { scaled } from "./observable.ts";
import { type Found, reportOf } from "./report.ts";

// A tube's grid, so that there is a point where B+ must not be.
const model = modelOf({
  parts: [
    ...halfWaveParts,
    { name: "V1", kind: "tube", type: "6V6GT", pins: { plate: "B+", screen: "B+", grid: "grid", cathode: "chassis" } },
  ],
});
/** What was read comes first; the others could be read next. */
const OBSERVABLES = [
  observableAt("dc-volts", "B+"),
  observableAt("dc-volts", "raw"),
  observableAt("dc-volts", "grid"),
  observableAt("ohms", "B+"),
];
const HEALTHY = [200, 230, 0, 15e3];
const ground = groundOf(OBSERVABLES.map((observable, k) => ({ observable, nominal: HEALTHY[k]!, slopes: [k < 2 ? 2 : 0] })));
const row = (values: readonly number[]) => Float64Array.from(values, (value, k) => scaled(OBSERVABLES[k]!.quantity, value));

/** A suspect with what every meter would show of it, judged by one reading of B+. */
function judged(fault: Fault, predicted: readonly number[], read: number, more: Partial<Judged> = {}): Judged {
  const likelihood = new Likelihood(ground, [{ index: 0, value: read }]);
  return { fault, edit: fault, prior: 1e-3, logWeight: 0, fit: likelihood.fit(row(predicted)), predicted: row(predicted), ...more };
}
const group = (posterior: number, ...members: Judged[]): Group => ({
  posterior,
  members: members.map((one) => ({ judged: one, posterior: posterior / members.length })),
});
const found = (groups: readonly Group[], healthy: number, noneOfThese: number, read: number): Found => ({
  life: "found",
  readings: [{ value: read }] as unknown as Found["readings"],
  usable: [{ index: 0, value: read }],
  ground,
  healthy: { fit: new Likelihood(ground, [{ index: 0, value: read }]).fit(ground.nominal), posterior: healthy },
  noneOfThese,
  groups,
  priorScale: 1,
  top: 5,
  hypotheses: 10,
  spared: 1,
  simulations: 4,
  complete: true,
  seconds: 0.1,
});

const SHORT: Fault = { kind: "short", part: "C2", element: "C2" };
const OPEN: Fault = { kind: "open", part: "R2", element: "R2" };
const MOVED: Fault = { kind: "moved-lead", part: "R2", element: "R2", lead: "a", from: "B+", to: "grid" };
/** B+ at 100 V: by a resistor that is open, a capacitor that leaks, a lead on the grid. */
const low = judged(SHORT, [100, 180, 0, 500], 100);
const other = judged(OPEN, [102, 225, 0, 1e6], 100);
const onGrid = judged(MOVED, [99, 190, 99, 15e3], 100);

describe("reportOf", () => {
  it("names the suspects by belief, what each was judged by, and who shares the first place", () => {
    const twin = judged({ ...SHORT, part: "R2", element: "R2" }, [100, 180, 0, 500], 100);
    const report = reportOf(model, found([group(0.7, low, twin), group(0.2, other)], 0.05, 0.05, 100));
    expect(report.verdict).toBe("suspects");
    expect(report.suspects.map(({ rank, title, posterior }) => [rank, title, posterior])).toEqual([
      [1, "C2 is shorted", 0.7],
      [2, "R2 is open", 0.2],
    ]);
    const [first] = report.suspects;
    expect(first!.group.map(({ title }) => title)).toEqual(["R2 is shorted"]);
    expect(first!.readings).toMatchObject([{ at: "B+", quantity: "dc-volts", read: 100, predicted: 100, healthy: 200 }]);
    expect(report.unexplained).toEqual([]);
    expect(report).toMatchObject({ hypotheses: 10, spared: 1, simulations: 4, complete: true, life: "found" });
  });

  it("takes no more of them than asked for", () => {
    expect(reportOf(model, { ...found([group(0.5, low), group(0.4, other)], 0.05, 0.05, 100), top: 1 }).suspects).toHaveLength(1);
  });

  it.each([
    ["nothing-off", 0.6, 0.1],
    ["none-of-these", 0.1, 0.6],
    ["suspects", 0.3, 0.3],
  ] as const)("says %s where that is believed most", (verdict, healthy, none) => {
    const report = reportOf(model, found([group(1 - healthy - none, low)], healthy, none, 100));
    expect(report.verdict).toBe(verdict);
    // What is not believed is not named.
    expect(report.suspects.length > 0).toBe(verdict !== "nothing-off");
  });

  it("proposes cold ohms that tell the leaders apart, with what each would show", () => {
    const { next } = reportOf(model, found([group(0.5, low), group(0.4, other)], 0.05, 0.05, 100));
    expect(next).toMatchObject({ at: "B+", quantity: "ohms", condition: "cold" });
    expect(next!.bits).toBeGreaterThan(0.5);
    const shown = new Map(next!.predictions.map(({ title, value }) => [title, value]));
    expect(shown.get("C2 is shorted")).toBeCloseTo(500, 6);
    expect(shown.get("R2 is open")).toBeCloseTo(1e6, 0);
    expect(shown.get("nothing but tolerances")).toBeCloseTo(15e3, 6);
    expect(next!.why).toContain("plug out");
  });

  it("proposes nothing once one suspect stands, or soundness does", () => {
    expect(reportOf(model, found([group(0.985, low)], 0.01, 0.005, 100)).next).toBeUndefined();
    expect(reportOf(model, found([group(0.01, low)], 0.985, 0.005, 198)).next).toBeUndefined();
    expect(reportOf(model, found([group(0.9, low), group(0.06, other)], 0.03, 0.01, 100)).next).toBeDefined();
  });

  it("allows no power while a suspect of some belief would put B+ on a grid", () => {
    const report = reportOf(model, found([group(0.7, low), group(0.2, onGrid)], 0.05, 0.05, 100));
    expect(report.coldOnly).toMatchObject({ at: "grid to chassis", volts: 99 });
    expect(report.coldOnly!.title).toContain("R2");
    expect(report.suspects[1]!.hazard).toMatchObject({ at: "grid to chassis", volts: 99, healthy: 0 });
    expect(report.suspects[0]).not.toHaveProperty("hazard");
    expect(report.next?.quantity ?? "ohms").toBe("ohms");
    // With next to no belief it keeps nobody from a reading.
    expect(reportOf(model, found([group(0.9, low), group(0.005, onGrid)], 0.05, 0.045, 100)).coldOnly).toBeUndefined();
  });

  it("tells of a reading that even the first suspect leaves unexplained", () => {
    const far = judged(SHORT, [150, 200, 0, 500], 100);
    const report = reportOf(model, found([group(0.9, far)], 0.05, 0.05, 100));
    expect(report.unexplained).toMatchObject([{ at: "B+", read: 100, predicted: 150 }]);
    expect(report.unexplained[0]!.deviation).toBeLessThan(-3.3);
  });

  it("tells between which values a part's lies, and of a drifted part beside the fault", () => {
    const ranged = judged({ ...OPEN, kind: "drift-high", parameter: "ohms", value: 30e3 }, [150, 220, 0, 3e4], 150, {
      low: 25e3,
      high: 36e3,
      second: { kind: "drift-low", part: "R1", element: "R1", parameter: "ohms", value: 1500 },
    });
    const [first] = reportOf(model, found([group(0.9, ranged)], 0.05, 0.05, 150)).suspects;
    expect(first).toMatchObject({ low: 25e3, high: 36e3 });
    expect(first!.second!.title).toContain("R1");
  });
});
