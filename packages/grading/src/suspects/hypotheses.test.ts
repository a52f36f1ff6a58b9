import { describe, expect, it } from "vitest";
import { modelOf } from "../testing/model.ts";
import { halfWaveParts } from "../testing/suspectChassis.ts";
import { enumerateFaults } from "./enumerate.ts";
import type { Fault } from "./fault.ts";
import { FaultSolver } from "./faultSolver.ts";
import { lay } from "./ground.ts";
import { judgeAll } from "./hypotheses.ts";
import type { Judged } from "./judged.ts";
import { Likelihood } from "./likelihood.ts";
import { observableOf, unscaled } from "./observable.ts";
import { priorsOf } from "./priors.ts";
import { Screen } from "./screen.ts";

const places = ["raw", "B+"] as const;
const model = modelOf({
  parts: [...halfWaveParts],
  readings: [
    ...places.map((at) => ({ at, quantity: "dc-volts" as const, condition: "operating", value: "1 V" })),
    { at: "B+", quantity: "ohms" as const, condition: "cold", value: "1 kohm" },
  ],
});
const ground = lay(model, "found", model.readings.map(observableOf));
const wanted = new Set(model.readings.keys());
const faults = enumerateFaults(
  model,
  "found",
  ground.situations.map(({ compiled }) => compiled),
  priorsOf(model),
);

/** What the meters show with a fault in the chassis; volts, and the logarithm of ohms as the search keeps them. */
function rowWith(fault?: Fault): Float64Array {
  return fault === undefined ? ground.nominal : new FaultSolver(ground, 60).predict([fault], wanted, { effort: "fine" })!;
}
/** Looks at every hypothesis with what the meters show of a fault. */
function judge(row: Float64Array, tick: () => boolean = () => false) {
  const usable = [...row].map((value, index) => ({ index, value: unscaled(ground.observables[index]!.quantity, value) }));
  const likelihood = new Likelihood(ground, usable);
  return judgeAll(faults, { ground, solver: new FaultSolver(ground, 60), screen: new Screen(ground), likelihood, wanted, tick });
}
const ranked = (judged: readonly Judged[]) => [...judged].sort((a, b) => b.logWeight - a.logWeight);
const is =
  (one: Partial<Fault>) =>
  ({ fault }: Judged) =>
    Object.entries(one).every(([name, value]) => fault[name as keyof Fault] === value);

describe("judgeAll", () => {
  it.each<Fault>([
    { kind: "short", part: "C2", element: "C2" },
    { kind: "open", part: "R2", element: "R2" },
    { kind: "open", part: "R1", element: "R1" },
  ])("$kind $part explains its own readings, and little does as well", (fault) => {
    const { judged, complete } = judge(rowWith(fault));
    expect(complete).toBe(true);
    const list = ranked(judged);
    const own = list.find(is({ kind: fault.kind, part: fault.part }));
    expect(own).toBeDefined();
    // What it predicts is what was read: no more is left than the coarse steps of a search.
    expect(Math.max(...own!.fit.deviations.map(Math.abs))).toBeLessThan(0.5);
    expect(list[0]!.logWeight - own!.logWeight).toBeLessThan(3);
    // Of over a hundred hypotheses few come near.
    expect(judged.length).toBeGreaterThan(60);
    expect(list.filter(({ logWeight }) => logWeight > own!.logWeight - 1).length).toBeLessThan(12);
  });

  it("estimates the value of a drifted resistor between ends that hold it", () => {
    const row = rowWith({ kind: "drift-high", part: "R1", element: "R1", parameter: "ohms", nominal: 2200, value: 4400 });
    const { judged } = judge(row);
    const own = ranked(judged).find(is({ kind: "drift-high", part: "R1" }))!;
    // Two direct voltages, each to about 1 %, of which the fault moves one by a tenth.
    expect(Math.abs(own.edit.value! / 4400 - 1)).toBeLessThan(0.1);
    expect(own.low!).toBeLessThan(4400);
    expect(own.high!).toBeGreaterThan(4400);
    expect(ranked(judged)[0]!.logWeight - own.logWeight).toBeLessThan(3);
  });

  it("leaves wires at alternating points alone where something else explains the readings, and tells how many", () => {
    const { spared } = judge(rowWith({ kind: "short", part: "C2", element: "C2" }));
    expect(spared).toBeGreaterThan(0);
    // Readings that no single fault gives: everything is looked at.
    const row = rowWith({ kind: "short", part: "C2", element: "C2" });
    const absurd = Float64Array.of(row[0]!, 3 * ground.nominal[1]!, row[2]!);
    expect(judge(absurd).spared).toBe(0);
  });

  it("stops when time is up, and lets the first look stand for the rest", () => {
    const row = rowWith({ kind: "short", part: "C2", element: "C2" });
    let looked = 0;
    const { judged, complete } = judge(row, () => ++looked >= 2);
    expect(complete).toBe(false);
    expect(looked).toBe(2);
    expect(judged.length).toBeGreaterThan(30);
    // The first look alone has the shorted capacitor among the first.
    expect(
      ranked(judged)
        .slice(0, 12)
        .some(is({ kind: "short", part: "C2" })),
    ).toBe(true);
  });

  it("calls its clock once for each hypothesis that it follows", () => {
    let ticks = 0;
    const { judged } = judge(rowWith({ kind: "open", part: "R2", element: "R2" }), () => {
      ticks += 1;
      return false;
    });
    expect(ticks).toBeGreaterThan(0);
    expect(ticks).toBeLessThanOrEqual(judged.length + faults.families.length + faults.singles.length);
  });
});
