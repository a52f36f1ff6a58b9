/** The periodic solver on supplies drawn at random, from dead short to no load, where Newton's method is easily led astray. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Element } from "./network.ts";
import { solveSteady } from "./steady.ts";
import { capacitor, inductor, line, network, resistor, silicon, vacuum } from "./test-parts.ts";

const spread = (low: number, high: number) => fc.double({ min: Math.log(low), max: Math.log(high), noNaN: true }).map(Math.exp);

interface Values {
  tube: boolean;
  volts: number;
  source: number;
  first: number;
  second: number;
  henries: number;
  ohms: number;
}

const values = fc.record({
  tube: fc.boolean(),
  volts: spread(6, 500),
  source: spread(0.1, 500),
  first: spread(1e-6, 1e-2),
  second: spread(1e-6, 1e-3),
  henries: spread(0.1, 20),
  ohms: spread(200, 1e7),
});

const shapes: Record<string, (v: Values, rectifier: (id: string, a: string, b: string) => Element) => Element[]> = {
  "half-wave": (v, d) => [
    line("S", "s", "0", v.volts),
    d("D1", "a", "p"),
    capacitor("C1", "p", "0", v.first),
    resistor("RL", "p", "0", v.ohms),
  ],
  bridge: (v, d) => [
    line("S", "s", "n", v.volts),
    ...[d("D1", "a", "p"), d("D2", "n", "p"), d("D3", "0", "a"), d("D4", "0", "n")],
    capacitor("C1", "p", "0", v.first),
    resistor("RL", "p", "0", v.ohms),
  ],
  "full-wave doubler": (v, d) => [
    line("S", "s", "0", v.volts),
    ...[d("D1", "a", "p"), d("D2", "m", "a")],
    ...[capacitor("C1", "p", "0", v.first), capacitor("C2", "0", "m", v.second)],
    resistor("RL", "p", "m", v.ohms),
  ],
  "cascade doubler": (v, d) => [
    line("S", "s", "0", v.volts),
    ...[d("D1", "0", "x"), d("D2", "x", "p")],
    ...[capacitor("C1", "a", "x", v.first), capacitor("C2", "p", "0", v.second)],
    resistor("RL", "p", "0", v.ohms),
  ],
  "choke input with a path for the choke": (v, d) => [
    line("S", "s", "0", v.volts),
    ...[d("D1", "a", "p"), d("D2", "0", "p")],
    inductor("L", "p", "q", v.henries, { dcrOhms: 100 }),
    capacitor("C1", "q", "0", v.first),
    resistor("RB", "q", "t", v.ohms / 3),
    capacitor("C2", "t", "0", v.second),
    resistor("RL", "t", "0", v.ohms),
  ],
};

describe("solveSteady finds the periodic state of any", () => {
  it.each(Object.entries(shapes))("%s supply", (_, shape) => {
    fc.assert(
      fc.property(values, (v) => {
        const rectifier = v.tube ? (id: string, a: string, b: string) => vacuum(id, a, b) : silicon;
        const steady = solveSteady(network(...shape(v, rectifier), resistor("RS", "s", "a", v.source)));
        expect(steady.currentResidual).toBeLessThan(1e-4);
        // Nothing is stored over a period: what the capacitors and the choke take in they give back.
        const load = steady.elements.get("RL")!;
        expect(Math.abs(steady.elements.get("C1")!.meanAmps)).toBeLessThan(
          2e-2 * Math.max(load.meanAmps, steady.elements.get("C1")!.rmsAmps),
        );
        const watts = [...steady.elements.values()].map((figures) => figures.watts);
        const delivered = -watts.filter((value) => value < 0).reduce((a, b) => a + b, 0);
        // With hardly a load the pulse is shorter than a step, and the balance as rough as that.
        expect(Math.abs(watts.reduce((a, b) => a + b, 0))).toBeLessThan(0.05 * delivered + 1e-6);
      }),
      { numRuns: 60, seed: 1954 },
    );
  });
});
