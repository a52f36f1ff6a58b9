import type { JobPart } from "@underchassis/dataset";
import { describe, expect, it } from "vitest";
import { modelOf } from "../testing/model.ts";
import { halfWaveParts, observableAt } from "../testing/suspectChassis.ts";
import { judgeDoubles } from "./doubles.ts";
import type { Fault } from "./fault.ts";
import { FaultSolver } from "./faultSolver.ts";
import { lay } from "./ground.ts";
import { judgedOf } from "./judged.ts";
import { Likelihood } from "./likelihood.ts";
import { unscaled } from "./observable.ts";
import { Screen } from "./screen.ts";

/** Two dividers on the small supply. Values common-practice. */
const parts: JobPart[] = [
  ...halfWaveParts,
  { name: "R3", kind: "resistor", marked: "100 kohm 10%", between: ["B+", "tap"] },
  { name: "R4", kind: "resistor", marked: "47 kohm 10%", between: ["tap", "chassis"] },
  { name: "R5", kind: "resistor", marked: "220 kohm 10%", between: ["B+", "tap 2"] },
  { name: "R6", kind: "resistor", marked: "220 kohm 10%", between: ["tap 2", "chassis"] },
];
const observables = [
  ...["raw", "B+", "tap", "tap 2"].map((at) => observableAt("dc-volts", at)),
  observableAt("ohms", "tap"),
  observableAt("ohms", "tap 2"),
];
const wanted = new Set(observables.keys());
const ground = lay(modelOf({ parts }), "found", observables);
const solver = new FaultSolver(ground, 60);

const moved: Fault = { kind: "moved-lead", part: "R3", element: "R3", lead: "0", from: "B+", to: "raw" };
const drifted: Fault = { kind: "drift-high", part: "R6", element: "R6", parameter: "ohms", nominal: 220e3, value: 400e3 };

/** Judges a single fault by readings of a chassis with these faults, and looks for a part that drifted beside it. */
function search(single: Fault, real: readonly Fault[]) {
  const readings = solver.predict(real, wanted, { effort: "fine" })!;
  const likelihood = new Likelihood(
    ground,
    observables.map(({ quantity }, index) => ({ index, value: unscaled(quantity, readings[index]!) })),
  );
  const predicted = solver.predict([single], wanted, { effort: "fine" })!;
  const judged = judgedOf(single, single, 0.01, predicted, likelihood.fit(predicted));
  const slopes = new Screen(ground).slopes(single, predicted);
  return { judged, doubles: judgeDoubles([{ judged, slopes }], ground, solver, likelihood, wanted) };
}

describe("judgeDoubles", () => {
  it("finds a drifted resistor beside a moved lead, and about its value", () => {
    const { judged, doubles } = search(moved, [moved, drifted]);
    const best = doubles.reduce((a, b) => (b.logWeight > a.logWeight ? b : a));
    expect(best.fault).toBe(moved);
    expect(best.second.part).toBe("R6");
    expect(best.second.kind).toBe("drift-high");
    // The linear estimate of a drift of a factor 1.8, drawn towards no drift by its own spread.
    expect(Math.abs(Math.log(best.second.value! / 400e3))).toBeLessThan(0.3);
    expect(best.logWeight).toBeGreaterThan(judged.logWeight);
    expect(best.fit.squares).toBeLessThan(judged.fit.squares);
    expect(best.prior).toBeLessThan(judged.prior);
  });

  it("finds one that has fallen", () => {
    const { doubles } = search(moved, [moved, { ...drifted, kind: "drift-low", value: 100e3 }]);
    const best = doubles.reduce((a, b) => (b.logWeight > a.logWeight ? b : a));
    expect([best.second.part, best.second.kind]).toEqual(["R6", "drift-low"]);
  });

  it("finds none where the single fault explains the readings, nor in the part at fault itself", () => {
    expect(search(moved, [moved]).doubles).toEqual([]);
    const own = search({ kind: "wrong-value", part: "R6", element: "R6", parameter: "ohms", value: 230e3 }, [drifted]);
    expect(own.doubles.some(({ second }) => second.part === "R6")).toBe(false);
  });
});
