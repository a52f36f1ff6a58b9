import { describe, expect, it } from "vitest";
import { discharge } from "./discharge.ts";
import { battery, capacitor, line, network, resistor, silicon } from "./test-parts.ts";

describe("discharge", () => {
  it("one capacitor and its bleeder: RC ln(V0/V)", () => {
    const supply = network(
      line("S", "a", "0", 300),
      silicon("D", "a", "p"),
      capacitor("C", "p", "0", 40e-6),
      resistor("R", "p", "0", 100e3),
    );
    const result = discharge(supply, new Map([["C", 420]]), { toVolts: 50, points: ["p"] });
    expect(result.seconds.get("p")! / (4 * Math.log(420 / 50))).toBeCloseTo(1, 3);
    expect(result.joules).toBeCloseTo((40e-6 * 420 ** 2) / 2, 9);
  });

  it("two capacitors sharing a drain: the sum of two exponentials, by hand", () => {
    // Equal C = 20 uF at 400 V, joined by R1 = 10 k; R2 = 100 k from the second to ground. With tau = C R1 and r = R1/R2 the
    // rates are (2 + r -+ sqrt(4 + r^2))/2 in units of 1/tau.
    const [r1, r2, c, start] = [10e3, 100e3, 20e-6, 400];
    const r = r1 / r2;
    const rates = [-1, 1].map((sign) => (2 + r + sign * Math.sqrt(4 + r * r)) / 2) as [number, number];
    // First capacitor: v1 = A exp(-s1 t) + B exp(-s2 t), A + B = V, and dv1/dt = 0 at the start (equal voltages): s1 A + s2 B = 0.
    const a = (start * rates[1]) / (rates[1] - rates[0]);
    const b = start - a;
    const volts = (seconds: number): number =>
      a * Math.exp((-rates[0] * seconds) / (c * r1)) + b * Math.exp((-rates[1] * seconds) / (c * r1));
    const result = discharge(
      network(capacitor("C1", "p", "0", c), capacitor("C2", "q", "0", c), resistor("R1", "p", "q", r1), resistor("R2", "q", "0", r2)),
      new Map([
        ["C1", start],
        ["C2", start],
      ]),
      { toVolts: 30 },
    );
    expect(volts(result.seconds.get("p")!)).toBeCloseTo(30, 1);
    expect(result.seconds.get("q")!).toBeLessThan(result.seconds.get("p")!);
  });

  it("a capacitor that nothing drains never falls; one below the limit takes no time", () => {
    const circuit = network(
      battery("B", "a", "0", 100),
      resistor("R", "a", "p", 1000),
      capacitor("C", "p", "0", 10e-6),
      capacitor("K", "k", "0", 10e-6),
      resistor("RK", "k", "0", 1000),
    );
    const result = discharge(
      circuit,
      new Map([
        ["C", 100],
        ["K", 5],
      ]),
      { toVolts: 30, longestSeconds: 1000 },
    );
    expect(result.seconds.get("p")).toBe(Number.POSITIVE_INFINITY);
    expect(result.seconds.get("k")).toBe(0);
  });

  it("refuses an unknown capacitor or point", () => {
    const circuit = network(capacitor("C", "p", "0", 1e-6), resistor("R", "p", "0", 1000));
    expect(() => discharge(circuit, new Map([["R", 1]]), { toVolts: 30 })).toThrow(expect.objectContaining({ code: "bad-value" }));
    expect(() => discharge(circuit, new Map([["C", 99]]), { toVolts: 30, points: ["x"] })).toThrow(
      expect.objectContaining({ code: "unknown-point" }),
    );
  });
});
