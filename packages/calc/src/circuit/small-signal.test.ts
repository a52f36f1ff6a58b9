import { describe, expect, it } from "vitest";
import { type TriodePoint, triodePlate } from "./devices/triode.ts";
import type { Triode } from "./network.ts";
import { smallSignal } from "./small-signal.ts";
import { operatingPoint } from "./steady.ts";
import { battery, capacitor, inductor, line, network, resistor } from "./test-parts.ts";

const triode: Triode = {
  kind: "triode",
  id: "V",
  nodes: { plate: "p", grid: "g", cathode: "k" },
  parameters: { mu: 21.5, ex: 1.3, kg1: 1180, kp: 84, kvb: 300 },
};

describe("smallSignal", () => {
  it("RC coupling: gain, phase and corner of the text-book high-pass", () => {
    const circuit = network(line("S", "a", "0", 1, 1000), capacitor("C", "a", "b", 0.01e-6), resistor("R", "b", "0", 470e3));
    const corner = 1 / (2 * Math.PI * 0.01e-6 * 470e3);
    const { gain, corners, outputOhms } = smallSignal(circuit, { input: "S", outputs: ["b"], hertz: [corner, 1e5] }).get("b")!;
    expect(gain[0]!.re).toBeCloseTo(0.5, 6);
    expect(gain[0]!.im).toBeCloseTo(0.5, 6);
    expect(corners.lowHertz! / corner).toBeCloseTo(1, 5);
    expect(corners.highHertz).toBeUndefined();
    expect(outputOhms[0]! / (470e3 * Math.SQRT1_2)).toBeCloseTo(1, 6);
  });

  it("bypassed triode stage: -gm (rp || RL), output rp || RL, and degeneration without the bypass", () => {
    const stage = (bypassed: boolean) =>
      network(
        battery("B", "b", "0", 300),
        { ...line("S", "g", "0", 0.1, 1000) },
        resistor("RL", "b", "p", 22e3),
        resistor("RK", "k", "0", 820),
        triode,
        ...(bypassed ? [capacitor("CK", "k", "0", 1000e-6)] : []),
      );
    const point = operatingPoint(stage(true));
    const volts = (name: string): number => point.points.get(name)!.meanVolts;
    const slopes: TriodePoint = { amps: 0, perPlateVolt: 0, perGridVolt: 0 };
    triodePlate(triode, volts("p") - volts("k"), volts("g") - volts("k"), slopes);
    const [gm, rp] = [slopes.perGridVolt, 1 / slopes.perPlateVolt];
    const options = { input: "S", outputs: ["p"], hertz: [1000] };
    const bypassed = smallSignal(stage(true), options).get("p")!;
    expect(bypassed.gain[0]!.re / ((-gm * rp * 22e3) / (rp + 22e3))).toBeCloseTo(1, 4);
    expect(bypassed.outputOhms[0]! / ((rp * 22e3) / (rp + 22e3))).toBeCloseTo(1, 3);
    const mu = gm * rp;
    const plain = smallSignal(stage(false), options).get("p")!;
    expect(plain.gain[0]!.re / ((-mu * 22e3) / (rp + 22e3 + (mu + 1) * 820))).toBeCloseTo(1, 6);
    const plainRp = rp + (mu + 1) * 820;
    expect(plain.outputOhms[0]! / ((plainRp * 22e3) / (plainRp + 22e3))).toBeCloseTo(1, 6);
  });

  it("finds both corners of a band-pass and the choke's inductance at its current", () => {
    const swing = { residualHenries: 2, halfAmps: 0.05 };
    const circuit = network(
      { ...battery("B", "a", "0", 50) },
      resistor("R", "a", "b", 1000),
      inductor("L", "b", "0", 10, { dcrOhms: 1e-3, swing }),
      capacitor("C", "b", "0", 1e-6),
    );
    // At 50 mA the choke has (2 + 8/2) = 6 H; parallel RLC band-pass: centre 1/(2 pi sqrt(LC)), width 1/(2 pi R C).
    const { corners } = smallSignal(circuit, { input: "B", outputs: ["b"], hertz: [] }).get("b")!;
    const width = 1 / (2 * Math.PI * 1000 * 1e-6);
    expect((corners.highHertz! - corners.lowHertz!) / width).toBeCloseTo(1, 1);
    expect(Math.sqrt(corners.highHertz! * corners.lowHertz!) / (1 / (2 * Math.PI * Math.sqrt(6e-6)))).toBeCloseTo(1, 1);
  });

  it("refuses an input that is no source, and an unknown output", () => {
    const circuit = network(battery("B", "a", "0", 1), resistor("R", "a", "0", 1));
    expect(() => smallSignal(circuit, { input: "R", outputs: ["a"], hertz: [1] })).toThrow(expect.objectContaining({ code: "bad-value" }));
    expect(() => smallSignal(circuit, { input: "B", outputs: ["z"], hertz: [1] })).toThrow(
      expect.objectContaining({ code: "unknown-point" }),
    );
  });
});
