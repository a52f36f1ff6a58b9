import { solveSteady } from "@underchassis/calc";
import type { JobPart } from "@underchassis/dataset";
import { describe, expect, it } from "vitest";
import { modelOf } from "../testing/model.ts";
import { halfWaveParts, observableAt, outputStageParts } from "../testing/suspectChassis.ts";
import { applyFault } from "./applyFault.ts";
import type { Fault } from "./fault.ts";
import { FaultSolver } from "./faultSolver.ts";
import { lay } from "./ground.ts";
import { Screen } from "./screen.ts";

const ohms = (part: string, value: number): Fault => ({ kind: "wrong-value", part, element: part, parameter: "ohms", value });

describe("with the power off", () => {
  const observables = [
    ...["raw", "B+", "hv"].map((at) => observableAt("ohms", at)),
    observableAt("ohms", "raw", { to: "B+" }),
    observableAt("ohms", "hv", { to: "raw" }),
  ];
  const ground = lay(modelOf({ parts: [...halfWaveParts] }), "found", observables);
  const faults: Fault[] = [
    ohms("R1", 22e3),
    ohms("R2", 0),
    ohms("R2", Number.POSITIVE_INFINITY),
    { kind: "short", part: "C2", element: "C2" },
    { kind: "leaky", part: "C1", element: "C1", parameter: "leakOhms", value: 3000 },
    { kind: "open", part: "T1", element: "T1.hv" },
    { kind: "moved-lead", part: "R1", element: "R1", lead: "0", from: "raw", to: "hv" },
    { kind: "bridge", part: "hv", element: "hv", to: "B+", parameter: "ohms", value: 500 },
  ];

  it.each(faults)("$kind $part $value: what the solver says", (fault) => {
    const exact = new FaultSolver(ground, 60).predict([fault], new Set(observables.keys()))!;
    const predicted = new Screen(ground).predict(fault)!;
    for (const index of observables.keys()) expect(predicted[index], `${index}`).toBeCloseTo(exact[index]!, 9);
  });

  it("by hand: 3 kohm of leak beside 2.2 and 15 kohm in series", () => {
    // Leakages of tens of megohms and more lie beside it.
    expect(new Screen(ground).predict(faults[4]!)![0]).toBeCloseTo(Math.log(1 / (1 / 3000 + 1 / 17200) + 0.2), 3);
  });
});

/** The output stage on a battery: nothing rectifies. */
const onBattery: JobPart[] = [
  { name: "B1", kind: "battery", marked: "250 V", between: ["B+", "chassis"] },
  ...outputStageParts.filter(({ name }) => ["R3", "R4", "R5", "V2"].includes(name)),
];

describe("a tube on a battery", () => {
  const points = ["B+", "plate", "grid", "cathode"];
  const model = modelOf({ parts: onBattery });
  const ground = lay(
    model,
    "found",
    points.map((at) => observableAt("dc-volts", at)),
  );
  const [{ network }] = ground.situations as [(typeof ground.situations)[0]];
  const faults: Fault[] = [
    ohms("R3", 12e3),
    ohms("R5", 0),
    ohms("R5", 2200),
    { kind: "dead", part: "V2", element: "V2" },
    { kind: "weak", part: "V2", element: "V2", parameter: "emission", value: 0.4 },
    { kind: "gassy", part: "V2", element: "V2", parameter: "gridOhms", value: 1e7 },
    { kind: "electrode-short", part: "V2", element: "V2", lead: "grid-cathode" },
    { kind: "moved-lead", part: "R4", element: "R4", lead: "1", from: "chassis", to: "cathode" },
    { kind: "bridge", part: "plate", element: "plate", to: "chassis", parameter: "ohms", value: 10e3 },
  ];

  it.each(faults)("$kind $part $value: the whole curve, to a thousandth", (fault) => {
    const predicted = new Screen(ground).predict(fault)!;
    const whole = solveSteady(applyFault(network, fault)!, { hertz: 60, islands: "tie" });
    for (const [index, at] of points.entries()) {
      const expected = (whole.points.get(at)?.meanVolts ?? 0) * ground.loading[index]!;
      expect(Math.abs(predicted[index]! - expected), at).toBeLessThan(1e-3 * ground.volts);
    }
  });

  it("says nothing of the source", () => {
    const source = network.elements.find(({ kind }) => kind === "voltage-source")!.id;
    expect(new Screen(ground).predict({ kind: "open", part: "B1", element: source })).toBeUndefined();
  });

  it("takes slopes about the fault: a tube that is dead hands on nothing of its emission", () => {
    const screen = new Screen(ground);
    const dead: Fault = { kind: "dead", part: "V2", element: "V2" };
    const slopes = screen.slopes(dead, screen.predict(dead)!);
    const width = ground.parameters.length;
    const emission = ground.parameters.findIndex(({ key }) => key === "V2|emission|");
    const loadColumn = ground.parameters.findIndex(({ key }) => key === "R5|ohms|");
    // Healthy, the cathode's voltage follows both.
    expect(Math.abs(ground.slopes[3 * width + emission]!)).toBeGreaterThan(0.1);
    expect(Math.abs(ground.slopes[3 * width + loadColumn]!)).toBeGreaterThan(0.1);
    for (const column of [emission, loadColumn]) expect(Math.abs(slopes[3 * width + column]!)).toBeLessThan(1e-3);
  });

  it("has the healthy slopes where the fault changes nothing", () => {
    const screen = new Screen(ground);
    const slopes = screen.slopes(ohms("R5", 390), ground.nominal);
    const width = ground.parameters.length;
    for (let k = 0; k < points.length * width; k += 1) {
      const healthy = ground.slopes[k]!;
      // One step of 3 % to one side: the curve bends by a share of that.
      expect(Math.abs(slopes[k]! - healthy)).toBeLessThan(0.05 * Math.abs(healthy) + 5e-3);
    }
  });
});

describe("a rectifier supply", () => {
  const observables = [observableAt("dc-volts", "raw"), observableAt("dc-volts", "B+"), observableAt("ripple-volts", "B+")];
  const ground = lay(modelOf({ parts: [...halfWaveParts] }), "found", observables);

  it("small changes of load follow the rectifier's tangent", () => {
    const [screen, solver] = [new Screen(ground), new FaultSolver(ground, 60)];
    const [sound, changed] = [ohms("R2", 15e3), ohms("R2", 14.5e3)].map((fault) => ({
      predicted: screen.predict(fault)!,
      exact: solver.predict([fault], new Set([0, 1]), { effort: "fine" })!,
    }));
    const predicted = changed!.predicted;
    for (const index of [0, 1]) {
      const change = changed!.exact[index]! - sound!.exact[index]!;
      expect(Math.abs(change)).toBeGreaterThan(0.3);
      // A change of 3.4 %: its square is what the tangent leaves out, and steps of another size what the base does.
      expect(Math.abs((predicted[index]! - sound!.predicted[index]!) / change - 1)).toBeLessThan(0.08);
    }
    expect(predicted[2]).toBeNaN();
  });

  it.each<Fault>([
    { kind: "short", part: "D1", element: "D1" },
    { kind: "lost-capacity", part: "C1", element: "C1", parameter: "farads", value: 2e-6 },
    { kind: "line-voltage", part: "line", element: "line", parameter: "rmsVolts", value: 90 },
    { kind: "shorted-turns", part: "T1", element: "T1.hv", parameter: "turns", value: 0.1 },
    { kind: "moved-lead", part: "R1", element: "R1", lead: "0", from: "raw", to: "hv" },
  ])("says nothing of $kind $part", (fault) => {
    expect(new Screen(ground).predict(fault)).toBeUndefined();
  });
});
