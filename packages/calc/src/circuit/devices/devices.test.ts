import { describe, expect, it } from "vitest";
import { THERMAL_VOLTS } from "../constants.ts";
import type { Element } from "../network.ts";
import { junctionCurve } from "./diode.ts";
import { makeDevice } from "./make-device.ts";
import { type PentodePoint, pentodeCurrents } from "./pentode.ts";
import { type PortDevice, type PortScratch, portScratch } from "./port-device.ts";
import { swingChokeDevice } from "./swing-choke.ts";
import { type TriodePoint, triodePlate } from "./triode.ts";
import { wrightOmega } from "./wright-omega.ts";

const triode = (mu: number, ex: number, kg1: number, kp: number, kvb: number): Element & { kind: "triode" } => ({
  kind: "triode",
  id: "V",
  nodes: { plate: "p", grid: "g", cathode: "k" },
  parameters: { mu, ex, kg1, kp, kvb },
});
const pentode = (mu: number, ex: number, kg1: number, kg2: number, kp: number, kvb: number): Element & { kind: "pentode" } => ({
  kind: "pentode",
  id: "V",
  nodes: { plate: "p", screen: "s", grid: "g", cathode: "k" },
  parameters: { mu, ex, kg1, kg2, kp, kvb },
});

function scratchFor(device: PortDevice, volts: number[]): PortScratch {
  return portScratch(device.ports.length, Float64Array.from(volts));
}

describe("wrightOmega", () => {
  // Defining equation w + ln w = z; omega(1) = 1 exactly, omega(0) = 0.567143290409784 (the omega constant, Corless & Jeffrey 2002).
  it("meets its definition from deep cut-off to high current", () => {
    expect(wrightOmega(1)).toBeCloseTo(1, 14);
    expect(wrightOmega(0)).toBeCloseTo(0.567143290409784, 14);
    for (const z of [-29, -10, -3, -1.01, -0.5, 0.7, 1.9, 2.1, 5, 40, 1e3, 1e6]) {
      const w = wrightOmega(z);
      expect(Math.abs(w + Math.log(w) - z) / Math.max(1, Math.abs(z))).toBeLessThan(1e-13);
    }
  });
});

describe("junctionCurve", () => {
  it("satisfies Shockley's equation behind its series resistance", () => {
    const out = { amps: 0, siemens: 0 };
    for (const volts of [-5, 0, 0.3, 0.6, 0.8, 1.5, 10]) {
      junctionCurve(volts, 1e-9, 1.8 * THERMAL_VOLTS, 0.05, out);
      const across = volts - 0.05 * out.amps;
      const shockley = 1e-9 * Math.expm1(across / (1.8 * THERMAL_VOLTS));
      expect(Math.abs(out.amps - shockley)).toBeLessThan(1e-9 * Math.abs(shockley) + 1e-15);
    }
  });
});

describe("triodePlate", () => {
  // Koren's 1996 parameters at published test points; currents printed to three digits in the project's tube tables.
  it.each([
    ["12AX7", triode(100, 1.4, 1060, 600, 300), 250, -2, 0.95e-3, 1670e-6],
    ["12AX7", triode(100, 1.4, 1060, 600, 300), 100, -1, 0.1e-3, 588e-6],
    ["12AU7", triode(21.5, 1.3, 1180, 84, 300), 250, -8.5, 10.39e-3, 2480e-6],
    ["12AT7", triode(60, 1.35, 460, 300, 300), 250, -2, 12.84e-3, 7221e-6],
    ["6DJ8", triode(28, 1.3, 330, 320, 300), 90, -1.3, 14.32e-3, 9426e-6],
  ])("%s at its test point", (_, element, plate, grid, amps, gm) => {
    const out: TriodePoint = { amps: 0, perPlateVolt: 0, perGridVolt: 0 };
    triodePlate(element, plate, grid, out);
    expect(Math.abs(out.amps - amps)).toBeLessThan(0.005e-3);
    expect(Math.abs(out.perGridVolt / gm - 1)).toBeLessThan(0.002);
  });
});

describe("pentodeCurrents", () => {
  // Koren's 1996 parameters; plate and screen milliamperes (screen exponent 1.5) as printed in the project's tube tables.
  it.each([
    ["6L6GC", pentode(8.7, 1.35, 1460, 4500, 48, 12), 250, 250, -14, 81.0, 12.6],
    ["EL34", pentode(11, 1.35, 650, 4200, 60, 24), 250, 250, -12.2, 113.4, 8.1],
    ["6550", pentode(7.9, 1.35, 890, 4200, 60, 24), 250, 250, -14, 160.5, 17.6],
  ])("%s at its test point", (_, element, plate, screen, grid, plateMilliamps, screenMilliamps) => {
    const out = {} as PentodePoint;
    pentodeCurrents(element, plate, screen, grid, out);
    expect(Math.abs(out.plateAmps * 1e3 - plateMilliamps)).toBeLessThan(0.06);
    expect(Math.abs(out.screenAmps * 1e3 - screenMilliamps)).toBeLessThan(0.06);
  });
});

describe("slopes of every device", () => {
  const two = { nodes: ["a", "b"] as const, id: "X" };
  const cases: [string, Element, number[][]][] = [
    ["diode", { kind: "diode", ...two, saturationAmps: 1e-9, emission: 1.8, ohms: 0.05, reverseOhms: 1e6 }, [[-3], [0.2], [0.7], [2]]],
    ["selenium", { kind: "selenium", ...two, plates: 5, kneeVoltsPerPlate: 0.6, ohmsPerPlate: 4 }, [[-3], [2.9], [3.1], [8]]],
    ["vacuum diode", { kind: "vacuum-diode", ...two, perveance: 3.5e-4 }, [[-3], [0.5], [30]]],
    ["gas diode", { kind: "gas-diode", ...two, dropVolts: 15, ohms: 5 }, [[2], [15.05], [20]]],
    ["zener", { kind: "zener", ...two, zenerVolts: 33, slopeOhms: 20 }, [[-33.001], [-40], [0.65], [-5]]],
    [
      "triode",
      triode(100, 1.4, 1060, 600, 300),
      [
        [250, -2],
        [20, 0.8],
        [100, -5],
        [5, -0.05],
      ],
    ],
    [
      "pentode",
      pentode(8.7, 1.35, 1460, 4500, 48, 12),
      [
        [250, 250, -14],
        [20, 200, -5],
        [100, 150, 0.9],
      ],
    ],
  ];
  it.each(cases)("%s: analytic slopes are those of the current", (_, element, points) => {
    const device = makeDevice(element, false)!;
    for (const volts of points) {
      const middle = scratchFor(device, volts);
      device.evaluate(middle, 0);
      volts.forEach((value, column) => {
        const step = 1e-5;
        const [low, high] = [-step, step].map((shift) => {
          const moved = scratchFor(device, volts.with(column, value + shift));
          device.evaluate(moved, 0);
          return moved.amps;
        });
        volts.forEach((__, row) => {
          const expected = (high![row]! - low![row]!) / (2 * step);
          expect(Math.abs(middle.slopes[row * volts.length + column]! - expected)).toBeLessThan(2e-4 * Math.abs(expected) + 1e-9);
        });
      });
    }
  });
});

describe("swingChokeDevice", () => {
  const device = swingChokeDevice({
    kind: "inductor",
    id: "L",
    nodes: ["a", "b"],
    henries: 20,
    dcrOhms: 150,
    swing: { residualHenries: 4, halfAmps: 0.05 },
  });
  it("has the inductance of its law as the slope of its flux", () => {
    for (const amps of [0, 0.02, 0.05, 0.2]) {
      const slope = (device.flux!.fluxAt(amps + 1e-6) - device.flux!.fluxAt(amps - 1e-6)) / 2e-6;
      expect(slope / (4 + 16 / (1 + (amps / 0.05) ** 2))).toBeCloseTo(1, 6);
      expect(device.flux!.ampsAt(device.flux!.fluxAt(amps))).toBeCloseTo(amps, 10);
    }
  });
});
