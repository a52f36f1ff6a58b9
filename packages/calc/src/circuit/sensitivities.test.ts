import { describe, expect, it } from "vitest";
import type { Network } from "./network.ts";
import { scaleParameter } from "./parameter.ts";
import { sensitivities, transferOhms } from "./sensitivities.ts";
import type { ParameterRef, Probe } from "./solution.ts";
import { solveSteady } from "./steady.ts";
import { battery, capacitor, inductor, line, load, network, resistor, vacuum } from "./test-parts.ts";
import { toleranceWindow } from "./window.ts";
import { worstCase } from "./worst-case.ts";

const ref = (element: string, parameter: string): ParameterRef => ({ element, parameter });
const dc = (from: string, to = "0"): Probe => ({ quantity: "dc-volts", from, to });

/** Supply with everything in it that a sensitivity can hang on. */
const supply: Network = network(
  line("S", "l", "0", 117),
  {
    kind: "transformer",
    id: "T",
    windings: [
      { id: "p", nodes: ["l", "0"], turns: 117, ohms: 5 },
      { id: "a", nodes: ["a", "0"], turns: 325, ohms: 100 },
      { id: "b", nodes: ["0", "b"], turns: 325, ohms: 100 },
    ],
  },
  vacuum("V1", "a", "k"),
  vacuum("V2", "b", "k"),
  capacitor("C1", "k", "0", 10e-6, { esrOhms: 2, leakOhms: 1e5 }),
  inductor("L", "k", "q", 8, { dcrOhms: 250, swing: { residualHenries: 2, halfAmps: 0.06 } }),
  capacitor("C2", "q", "0", 20e-6),
  resistor("R", "q", "0", 8000),
  resistor("RD", "q", "g", 6800),
  { kind: "gas-regulator", id: "VR", nodes: ["g", "0"], strikeVolts: 180, operatingVolts: 150, slopeOhms: 120, extinguishAmps: 0.005 },
  resistor("RP", "q", "p", 22e3),
  resistor("RK", "kk", "0", 680),
  resistor("RG", "gg", "0", 470e3),
  {
    kind: "triode",
    id: "V3",
    nodes: { plate: "p", grid: "gg", cathode: "kk" },
    parameters: { mu: 21.5, ex: 1.3, kg1: 1180, kp: 84, kvb: 300 },
  },
);

describe("sensitivities", () => {
  it("divider: by hand", () => {
    // v = V R2/(R1+R2): dv/dlnR2 = V R1 R2/(R1+R2)^2.
    const divider = network(battery("B", "a", "0", 10), resistor("R1", "a", "b", 3000), resistor("R2", "b", "0", 1000));
    const result = sensitivities(
      divider,
      [dc("b"), { quantity: "dc-amps", element: "R2" }],
      [ref("R1", "ohms"), ref("R2", "ohms"), ref("B", "dcVolts")],
    );
    const expected = [-1.875, 1.875, 2.5, -1.875e-3, -0.625e-3, 2.5e-3];
    for (const [k, value] of expected.entries()) expect(result.matrix[k]! / value).toBeCloseTo(1, 6);
  });

  it("agree with solving again a per cent up and down, for every kind of parameter and probe", () => {
    const parameters = [
      ref("S", "rmsVolts"),
      ref("T", "p.turns"),
      ref("T", "a.ohms"),
      ref("V1", "perveance"),
      ref("C1", "farads"),
      ref("C1", "esrOhms"),
      ref("C1", "leakOhms"),
      ref("L", "henries"),
      ref("L", "dcrOhms"),
      ref("R", "ohms"),
      ref("VR", "operatingVolts"),
      ref("V3", "emission"),
    ];
    const probes: Probe[] = [
      dc("q"),
      dc("p", "kk"),
      { quantity: "ac-volts", from: "k", to: "0" },
      { quantity: "ripple-volts", from: "k", to: "0" },
      { quantity: "dc-amps", element: "L" },
      { quantity: "rms-amps", element: "C1" },
      { quantity: "rms-amps", element: "T.p" },
      { quantity: "dc-amps", element: "VR" },
    ];
    const steady = solveSteady(supply);
    const result = sensitivities(supply, probes, parameters, steady);
    parameters.forEach((parameter, column) => {
      const at = (factor: number) =>
        solveSteady(
          {
            ...supply,
            elements: supply.elements.map((element) =>
              element.id === parameter.element ? scaleParameter(element, parameter, factor) : element,
            ),
          },
          { warmStart: steady },
        );
      const [low, high] = [at(0.995), at(1.005)];
      probes.forEach((probe, row) => {
        const expected = (high.read(probe) - low.read(probe)) / 0.01;
        const found = result.matrix[row * parameters.length + column]!;
        expect(Math.abs(found - expected), `${parameter.element}.${parameter.parameter} on ${JSON.stringify(probe)}`).toBeLessThan(
          0.03 * Math.abs(expected) + 3e-4 * Math.abs(result.values[row]!),
        );
      });
    });
  });

  it("let a hot filament follow its current", () => {
    // Lamp on a stiff line: (cold + (rated - cold) x^1.2) x = V/rated amps; differentiated by hand at x = 1.
    const lamp = network(line("S", "a", "0", 120), {
      kind: "filament",
      id: "F",
      nodes: ["a", "0"],
      coldOhms: 20,
      ratedOhms: 240,
      ratedAmps: 0.5,
    });
    const result = sensitivities(lamp, [{ quantity: "rms-amps", element: "F" }], [ref("S", "rmsVolts")]);
    expect(result.matrix[0]! / (120 / (20 + 220 * 2.2))).toBeCloseTo(1, 4);
  });

  it("refuses a parameter that the element cannot have", () => {
    expect(() => sensitivities(supply, [dc("q")], [ref("R", "farads")])).toThrow(expect.objectContaining({ code: "bad-value" }));
    expect(() => sensitivities(supply, [dc("q")], [ref("nothing", "ohms")])).toThrow(expect.objectContaining({ code: "bad-value" }));
  });
});

describe("transferOhms", () => {
  it("is the inverse of a resistor network's conductances: by hand", () => {
    // G = [[1/R1 + 1/R2, -1/R2], [-1/R2, 1/R2 + 1/R3]]; its inverse is [[R1 (R2 + R3), R1 R3], [R1 R3, R3 (R1 + R2)]] / (R1 + R2 + R3).
    const [r1, r2, r3] = [1000, 2000, 7000];
    const ladder = network(
      battery("B", "s", "0", 10),
      resistor("R1", "s", "a", r1),
      resistor("R2", "a", "b", r2),
      resistor("R3", "b", "0", r3),
    );
    const found = transferOhms(["a", "b", "s"], "0", solveSteady(ladder));
    const sum = r1 + r2 + r3;
    const expected = [r1 * (r2 + r3), r1 * r3, 0, r1 * r3, r3 * (r1 + r2), 0, 0, 0, 0].map((value) => value / sum);
    for (const [k, value] of expected.entries()) expect(found[k]).toBeCloseTo(value, 6);
  });

  it("a rectifier supply: what a milliampere put in does to the mean volts", () => {
    const points = ["k", "q", "p"];
    const steady = solveSteady(supply);
    const found = transferOhms(points, "0", steady);
    points.forEach((into, column) => {
      const at = (amps: number) => solveSteady(network(...supply.elements, load("I", "0", into, amps)), { warmStart: steady });
      const [low, high] = [at(-0.5e-3), at(0.5e-3)];
      points.forEach((point, row) => {
        const expected = (high.read(dc(point)) - low.read(dc(point))) / 1e-3;
        // Half a milliampere bends a rectifier's and a tube's curve by a few thousandths; the two solutions differ by steps of 1e-6 of 300 V.
        const slack = 0.01 * Math.abs(expected) + 1;
        expect(Math.abs(found[row * points.length + column]! - expected), `${into} on ${point}`).toBeLessThan(slack);
      });
    });
  });

  it("refuses a state that is not the engine's own, and a point that is not there", () => {
    const steady = solveSteady(network(battery("B", "a", "0", 1), resistor("R", "a", "0", 1)));
    expect(() => transferOhms(["a"], "0", { ...steady })).toThrow(expect.objectContaining({ code: "bad-value" }));
    expect(() => transferOhms(["z"], "0", steady)).toThrow(expect.objectContaining({ code: "unknown-point" }));
  });
});

describe("toleranceWindow and worstCase", () => {
  const divider = network(battery("B", "a", "0", 10), resistor("R1", "a", "b", 1000), resistor("R2", "b", "0", 1000));
  const parameters = [ref("R1", "ohms"), ref("R2", "ohms")];
  const result = sensitivities(divider, [dc("b"), dc("a", "b")], parameters);

  it("uniform tolerances: sigma by hand, perfectly opposed probes", () => {
    const { probes, covariance } = toleranceWindow(result, [0.1, 0.1]);
    // Each slope is 2.5 V; sigma = 2.5 * 0.1 * sqrt(2/3).
    expect(probes[0]!.sigma).toBeCloseTo(0.25 * Math.sqrt(2 / 3), 6);
    expect(probes[0]!.worstLow).toBeCloseTo(4.5, 6);
    expect(covariance[1]! / covariance[0]!).toBeCloseTo(-1, 6);
  });

  it("an asymmetric tolerance moves the mean", () => {
    const { probes } = toleranceWindow(result, [0, { minus: 0.1, plus: 0.5 }]);
    expect(probes[0]!.mean).toBeCloseTo(5 + 2.5 * 0.2, 6);
    expect(probes[0]!.worstHigh).toBeCloseTo(5 + 2.5 * 0.5, 6);
  });

  it("worst case is solved at the limits, not extrapolated", () => {
    const { low, high } = worstCase(divider, result, 0, [0.2, 0.2]);
    expect(low).toBeCloseTo((10 * 800) / 2000, 9);
    expect(high).toBeCloseTo((10 * 1200) / 2000, 9);
  });
});
