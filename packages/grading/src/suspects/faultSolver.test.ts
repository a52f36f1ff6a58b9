import { solveSteady } from "@underchassis/calc";
import { describe, expect, it } from "vitest";
import { modelOf } from "../testing/model.ts";
import { observableAt, outputStageParts } from "../testing/suspectChassis.ts";
import { applyFault } from "./applyFault.ts";
import type { Fault } from "./fault.ts";
import { FaultSolver } from "./faultSolver.ts";
import { lay } from "./ground.ts";

const model = modelOf({ parts: [...outputStageParts] });
const observables = [
  ...["raw", "B+", "plate", "cathode"].map((at) => observableAt("dc-volts", at)),
  observableAt("ripple-volts", "B+"),
  observableAt("ohms", "B+"),
  observableAt("ohms", "plate", { to: "B+" }),
  observableAt("dc-volts", "B+", { condition: "tubes-out" }),
];
const ground = lay(model, "found", observables);
const all = new Set(observables.keys());
const powered = ground.situations.find(({ key }) => key.startsWith("operating"))!;

const drift: Fault = { kind: "drift-high", part: "R3", element: "R3", parameter: "ohms", value: 8200, nominal: 2700 };
const faults: Fault[] = [
  drift,
  { kind: "open", part: "R5", element: "R5" },
  { kind: "leaky", part: "C2", element: "C2", parameter: "leakOhms", value: 15e3 },
  { kind: "lost-capacity", part: "C1", element: "C1", parameter: "farads", value: 4e-6 },
  { kind: "dead", part: "V2", element: "V2" },
  { kind: "moved-lead", part: "R3", element: "R3", lead: "0", from: "B+", to: "raw" },
];

describe("FaultSolver", () => {
  it.each(faults)("$kind $part: fine is a full solution of the edited network", (fault) => {
    const predicted = new FaultSolver(ground, 60).predict([fault], all, { effort: "fine" })!;
    const whole = solveSteady(applyFault(powered.network, fault)!, { hertz: 60, stepsPerPeriod: 96, islands: "tie" });
    for (const [index, at] of ["raw", "B+", "plate", "cathode"].entries()) {
      const expected = whole.read({ quantity: "dc-volts", from: at, to: "chassis" }) * ground.loading[index]!;
      // Steps of 48 against 96 a period: means agree to 0.1 % of the highest voltage.
      expect(Math.abs(predicted[index]! - expected), at).toBeLessThan(1e-3 * ground.volts);
    }
    const ripple = whole.read({ quantity: "ripple-volts", from: "B+", to: "chassis" });
    // Ripple to 2 %: the instants at which rectifiers open fall between steps.
    expect(Math.abs(predicted[4]! / ground.loading[4]! / ripple - 1)).toBeLessThan(0.02);
  });

  it.each(faults)("$kind $part: near says that it is far, or agrees with the coarse answer", (fault) => {
    const near = new FaultSolver(ground, 60).near([fault], all, () => false);
    const coarse = new FaultSolver(ground, 60).predict([fault], all)!;
    expect(near).toBeDefined();
    // Where the base helps, both take the same way.
    if (near !== "far") for (const index of all) expect(near![index]).toBeCloseTo(coarse[index]!, 6);
  });

  it("cold ohms by hand: 8.2 kohm between plate and B+, on the scale with a lead's 0.2 ohm", () => {
    const predicted = new FaultSolver(ground, 60).predict([drift], new Set([6]))!;
    // What lies beside it is leakage of tens of megohms.
    expect(predicted[6]).toBeCloseTo(Math.log(8200.2), 3);
    expect([...predicted].filter((value) => !Number.isNaN(value))).toHaveLength(1);
  });

  it("a part that is not there in a condition leaves its readings as they are", () => {
    const dead = new FaultSolver(ground, 60).predict([{ kind: "dead", part: "V2", element: "V2" }], all)!;
    // With the tubes out there is no tube to be dead.
    expect(dead[7]).toBe(ground.nominal[7]);
    expect(dead[1]).toBeGreaterThan(ground.nominal[1]! + 5);
    const nowhere = new FaultSolver(ground, 60);
    expect([...nowhere.predict([{ kind: "open", part: "R9", element: "R9" }], all)!]).toEqual([...ground.nominal]);
    expect(nowhere.solved).toBe(0);
  });

  it("applies several faults one after another", () => {
    const leak = faults[2]!;
    const both = new FaultSolver(ground, 60).predict([drift, leak], all, { effort: "fine" })!;
    const whole = solveSteady(applyFault(applyFault(powered.network, drift)!, leak)!, { hertz: 60, stepsPerPeriod: 96, islands: "tie" });
    expect(both[6]).toBeCloseTo(Math.log(8200.2), 3);
    for (const [index, at] of ["raw", "B+", "plate"].entries()) {
      const expected = whole.read({ quantity: "dc-volts", from: at, to: "chassis" }) * ground.loading[index]!;
      expect(Math.abs(both[index]! - expected), at).toBeLessThan(1e-3 * ground.volts);
    }
  });

  it("stops between conditions where the rest is not worth while, cold first", () => {
    const known: number[] = [];
    const solver = new FaultSolver(ground, 60);
    const found = solver.predict([drift], all, {
      hopeless: (soFar) => {
        known.push(soFar.filter((value) => !Number.isNaN(value)).length);
        return true;
      },
    });
    expect(found).toBeUndefined();
    expect(known).toEqual([2]);
    expect(solver.solved).toBe(1);
  });
});
