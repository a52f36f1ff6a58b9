import { describe, expect, it } from "vitest";
import type { Element } from "./network.ts";
import { operatingPoint } from "./steady.ts";
import { battery, capacitor, inductor, network, resistor, silicon } from "./test-parts.ts";

const triode = (id: string, plate: string, grid: string, cathode: string): Element => ({
  kind: "triode",
  id,
  nodes: { plate, grid, cathode },
  parameters: { mu: 100, ex: 1.4, kg1: 1060, kp: 600, kvb: 300 },
});

describe("operatingPoint", () => {
  it("opens capacitors and shorts coils but for their wire", () => {
    const steady = operatingPoint(
      network(
        battery("B", "a", "0", 12),
        inductor("L", "a", "b", 5, { dcrOhms: 20 }),
        resistor("R", "b", "0", 100),
        capacitor("C", "b", "0", 1e-6, { leakOhms: 300, esrOhms: 100 }),
      ),
    );
    // 100 ohm beside 400 ohm is 80 ohm; divider with 20 ohm.
    expect(steady.points.get("b")!.meanVolts).toBeCloseTo(9.6, 9);
    expect(steady.elements.get("C")!.meanAmps).toBeCloseTo(9.6 / 400, 9);
    expect(steady.hertz).toBe(0);
  });

  it("self-biased triode: plate current and bias of a printed example", () => {
    // Printed worked example with this parameter set: 221 V plate to cathode, -1.61 V grid, 1.07 mA. Resistors chosen to give it.
    const cathodeOhms = 1.61 / 1.077e-3;
    const steady = operatingPoint(
      network(
        battery("B", "b", "0", 221 + 1.61 + 1.077e-3 * 100e3),
        resistor("RL", "b", "p", 100e3),
        resistor("RK", "k", "0", cathodeOhms),
        resistor("RG", "g", "0", 1e6),
        triode("V", "p", "g", "k"),
      ),
    );
    expect(steady.elements.get("V")!.meanAmps * 1e3).toBeCloseTo(1.077, 2);
    expect(steady.points.get("k")!.meanVolts).toBeCloseTo(1.61, 2);
    expect(steady.elements.get("V")!.electrodes?.grid?.meanAmps).toBeCloseTo(0, 9);
  });

  it("converges from nothing on a direct-coupled chain with feedback", () => {
    const steady = operatingPoint(
      network(
        battery("B", "b", "0", 300),
        resistor("R1", "b", "p1", 220e3),
        resistor("K1", "k1", "0", 1500),
        resistor("G1", "g1", "0", 1e6),
        triode("V1", "p1", "g1", "k1"),
        triode("V2", "b", "p1", "k2"),
        resistor("K2", "k2", "0", 100e3),
        resistor("F", "k2", "k1", 470e3),
      ),
    );
    // A cathode follower sits a volt or two above its grid (common-practice).
    const above = steady.points.get("k2")!.meanVolts - steady.points.get("p1")!.meanVolts;
    expect(above).toBeGreaterThan(0);
    expect(above).toBeLessThan(3);
    expect(steady.currentResidual).toBeLessThan(1e-6);
  });

  it("a string of silicon junctions takes the voltage of Shockley's equation", () => {
    const steady = operatingPoint(
      network(
        battery("B", "a", "0", 100),
        resistor("R", "a", "b", 1000),
        silicon("D1", "b", "c"),
        silicon("D2", "c", "d"),
        silicon("D3", "d", "0"),
      ),
    );
    const amps = steady.elements.get("D1")!.meanAmps;
    const junction = 1.8 * 0.02586492 * Math.log(amps / 1e-9 + 1) + 0.05 * amps;
    expect(steady.points.get("b")!.meanVolts / (3 * junction)).toBeCloseTo(1, 5);
  });

  it("reports the operating point of rectifiers at rest when the sources are all alternating", () => {
    const steady = operatingPoint(
      network(
        { kind: "voltage-source", id: "S", nodes: ["a", "0"], rmsVolts: 117, hertz: 60 },
        silicon("D", "a", "p"),
        resistor("R", "p", "0", 1000),
      ),
    );
    expect(steady.points.get("p")!.meanVolts).toBeCloseTo(0, 9);
  });
});
