import { describe, expect, it } from "vitest";
import type { Element } from "./network.ts";
import { battery, capacitor, inductor, line, network, resistor, silicon } from "./test-parts.ts";
import { switchOnSurge, transient } from "./transient.ts";

function at(times: Float64Array, wave: Float64Array, seconds: number): number {
  const k = times.findIndex((time) => time >= seconds - 1e-12);
  return wave[k]!;
}

describe("transient", () => {
  it("charges a capacitor through a resistor exponentially, and i2t is half the stored energy over R", () => {
    // v = V (1 - exp(-t/RC)); integral of i^2 over all time = V^2 C / (2 R).
    const run = transient(network(battery("B", "a", "0", 100), resistor("R", "a", "b", 1000), capacitor("C", "b", "0", 10e-6)), {
      durationSeconds: 0.2,
      stepSeconds: 5e-5,
    });
    for (const t of [0.005, 0.01, 0.03]) expect(at(run.times, run.volts.get("b")!, t) / (100 * -Math.expm1(-t / 0.01))).toBeCloseTo(1, 4);
    const figures = run.elements.get("R")!;
    expect(figures.i2t / ((100 ** 2 * 10e-6) / 2 / 1000)).toBeCloseTo(1, 3);
    expect(figures.joules / ((10e-6 * 100 ** 2) / 2)).toBeCloseTo(1, 3);
    expect(run.elements.get("C")!.joules / ((10e-6 * 100 ** 2) / 2)).toBeCloseTo(1, 3);
  });

  it("rings a coil and a capacitor at their damped frequency", () => {
    // v = V (1 - exp(-at)(cos wt + a/w sin wt)), a = R/2L, w = sqrt(1/LC - a^2).
    const run = transient(
      network(battery("B", "a", "0", 10), inductor("L", "a", "b", 1, { dcrOhms: 40 }), capacitor("C", "b", "0", 1e-6)),
      {
        durationSeconds: 0.02,
        stepSeconds: 5e-6,
      },
    );
    const decay = 20;
    const omega = Math.sqrt(1e6 - decay ** 2);
    for (const t of [0.001, 0.0031, 0.01, 0.02]) {
      const expected = 10 * (1 - Math.exp(-decay * t) * (Math.cos(omega * t) + (decay / omega) * Math.sin(omega * t)));
      expect(Math.abs(at(run.times, run.volts.get("b")!, t) - expected)).toBeLessThan(0.01);
    }
  });

  it("starts from given capacitor voltages and refuses those of what is no capacitor", () => {
    const circuit = network(capacitor("C", "a", "0", 1e-6), resistor("R", "a", "0", 1e4));
    const run = transient(circuit, { durationSeconds: 0.01, initial: new Map([["C", 50]]) });
    expect(at(run.times, run.volts.get("a")!, 0.01) / (50 * Math.exp(-1))).toBeCloseTo(1, 4);
    expect(() => transient(circuit, { durationSeconds: 0.01, initial: new Map([["R", 50]]) })).toThrow(
      expect.objectContaining({ code: "bad-value" }),
    );
  });

  it("a thermistor warms with the exponential of its time constant under constant heat", () => {
    // Constant current and beta near zero keep R at 50 ohm: T - ambient = I^2 R/delta (1 - exp(-t/tau)).
    const thermistor: Element = {
      kind: "thermistor",
      id: "TH",
      nodes: ["a", "0"],
      r25Ohms: 50,
      betaKelvin: 1e-6,
      deltaWattsPerKelvin: 0.02,
      tauSeconds: 10,
    };
    const run = transient(network({ kind: "current-source", id: "I", nodes: ["0", "a"], amps: 0.1 }, thermistor), {
      durationSeconds: 20,
      stepSeconds: 0.01,
    });
    const rise = run.kelvin.get("TH")!.at(-1)! - 298.15;
    expect(rise / (25 * -Math.expm1(-2))).toBeCloseTo(1, 2);
  });

  it("a relaxation oscillator with a gas tube strikes at its striking voltage again and again", () => {
    // Sawtooth between operating and striking voltage: T = RC ln((V - Vop)/(V - Vs)), plus the short discharge.
    const tube: Element = {
      kind: "gas-regulator",
      id: "NE",
      nodes: ["a", "0"],
      strikeVolts: 80,
      operatingVolts: 55,
      slopeOhms: 200,
      extinguishAmps: 2e-4,
    };
    const run = transient(network(battery("B", "b", "0", 120), resistor("R", "b", "a", 1e6), capacitor("C", "a", "0", 0.1e-6), tube), {
      durationSeconds: 1,
      stepSeconds: 2e-6,
      record: { points: ["a"], elements: [] },
    });
    const volts = run.volts.get("a")!;
    const crossings: number[] = [];
    for (let k = 1; k < volts.length; k++) if (volts[k - 1]! < 70 && volts[k]! >= 70) crossings.push(run.times[k]!);
    expect(crossings.length).toBeGreaterThan(5);
    const period = (crossings.at(-1)! - crossings[1]!) / (crossings.length - 2);
    expect(period / (0.1 * Math.log(65 / 40))).toBeCloseTo(1, 1);
  });
});

describe("switchOnSurge", () => {
  it("a rectifier straight off the line: worst at the crest, crest volts over the resistance in the way", () => {
    const supply = network(
      line("S", "a", "0", 117),
      resistor("R", "a", "b", 10),
      silicon("D", "b", "p"),
      capacitor("C", "p", "0", 100e-6),
      resistor("RL", "p", "0", 2000),
    );
    const surge = switchOnSurge(supply).get("D")!;
    // (sqrt(2) 117 - about 0.9 V)/10 at the very first instant.
    expect(surge.maxAmps / ((Math.SQRT2 * 117 - 0.9) / 10)).toBeCloseTo(1, 1);
    expect(surge.maxAmps).toBeLessThan((Math.SQRT2 * 117) / 10);
    expect(Math.abs(surge.maxAmpsPhase - Math.PI / 2)).toBeLessThan(0.3);
    expect(surge.i2t).toBeGreaterThan(0);
  });

  it("needs a sine source", () => {
    expect(() => switchOnSurge(network(battery("B", "a", "0", 1), resistor("R", "a", "0", 1)))).toThrow(
      expect.objectContaining({ code: "bad-value" }),
    );
  });
});
