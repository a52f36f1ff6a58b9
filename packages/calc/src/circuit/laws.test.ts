/** Laws that hold for every network: superposition, reciprocity, balance of power and of currents (fast-check). */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Element } from "./network.ts";
import { operatingPoint, solveSteady } from "./steady.ts";
import { battery, capacitor, inductor, line, load, network, resistor, silicon, vacuum } from "./test-parts.ts";

const ohms = fc.double({ min: 10, max: 1e6, noNaN: true });
/** A ladder with a rung at every point and one bridge from end to end: connected whatever the values. */
const ladder = fc.record({
  rails: fc.array(ohms, { minLength: 2, maxLength: 6 }),
  rungs: fc.array(ohms, { minLength: 7, maxLength: 7 }),
  bridge: ohms,
});

function ladderElements({ rails, rungs, bridge }: { rails: number[]; rungs: number[]; bridge: number }): Element[] {
  const point = (k: number): string => `n${k}`;
  return [
    ...rails.map((value, k) => resistor(`S${k}`, point(k), point(k + 1), value)),
    ...Array.from({ length: rails.length + 1 }, (_, k) => resistor(`P${k}`, point(k), "0", rungs[k]!)),
    resistor("X", "n0", point(rails.length), bridge),
  ];
}

describe("linear networks", () => {
  it("superposition: two sources act as the sum of each alone", () => {
    fc.assert(
      fc.property(
        ladder,
        fc.double({ min: 0, max: 200, noNaN: true }),
        fc.double({ min: 0, max: 0.1, noNaN: true }),
        (values, volts, amps) => {
          const end = `n${values.rails.length}`;
          const solve = (v: number, i: number): number =>
            operatingPoint(
              network(...ladderElements(values), battery("B", "b", "0", v), resistor("RB", "b", "n0", 100), load("I", "0", end, i)),
            ).points.get("n1")!.meanVolts;
          const both = solve(volts, amps);
          expect(Math.abs(solve(volts, 0) + solve(0, amps) - both)).toBeLessThan(1e-8 * (1 + Math.abs(volts) + Math.abs(amps) * 1e6));
        },
      ),
      { numRuns: 60, seed: 1954 },
    );
  });

  it("reciprocity: a current here gives there the voltage that the same current there gives here", () => {
    fc.assert(
      fc.property(ladder, (values) => {
        const end = `n${values.rails.length}`;
        const transfer = (from: string, to: string): number =>
          operatingPoint(network(...ladderElements(values), load("I", "0", from, 1e-3))).points.get(to)!.meanVolts;
        const [there, back] = [transfer("n0", end), transfer(end, "n0")];
        expect(Math.abs(there - back)).toBeLessThan(1e-9 * Math.abs(there) + 1e-12);
      }),
      { numRuns: 60, seed: 1954 },
    );
  });

  it("alternating: every series RLC has the current of its impedance", () => {
    const log = (low: number, high: number) => fc.double({ min: Math.log(low), max: Math.log(high), noNaN: true }).map(Math.exp);
    fc.assert(
      fc.property(log(50, 1e5), log(0.1, 30), log(1e-7, 1e-4), (r, l, c) => {
        const steady = solveSteady(
          network(
            line("S", "a", "0", 100),
            resistor("R", "a", "b", r),
            inductor("L", "b", "c", l, { dcrOhms: 20 }),
            capacitor("C", "c", "0", c),
          ),
          { stepsPerPeriod: 512 },
        );
        const omega = 2 * Math.PI * 60;
        const impedance = Math.hypot(r + 20, omega * l - 1 / (omega * c));
        // Near resonance the scheme's small error of frequency counts by Q.
        const q = (omega * l) / (r + 20);
        expect(Math.abs((steady.elements.get("R")!.rmsAmps * impedance) / 100 - 1)).toBeLessThan(1e-3 + 1e-3 * q);
      }),
      { numRuns: 40, seed: 1954 },
    );
  });
});

describe("rectifier supplies", () => {
  it("balance power and currents whatever the parts, and a capacitor carries no steady current", () => {
    fc.assert(
      fc.property(
        fc.record({
          volts: fc.double({ min: 10, max: 400, noNaN: true }),
          source: fc.double({ min: 1, max: 300, noNaN: true }),
          first: fc.double({ min: 2e-6, max: 200e-6, noNaN: true }),
          second: fc.double({ min: 2e-6, max: 200e-6, noNaN: true }),
          ohms: fc.double({ min: 800, max: 50e3, noNaN: true }),
          henries: fc.double({ min: 1, max: 20, noNaN: true }),
          tube: fc.boolean(),
        }),
        ({ volts, source, first, second, ohms: r, henries, tube }) => {
          const rectifier = tube ? vacuum("D", "b", "p") : silicon("D", "b", "p");
          const steady = solveSteady(
            network(
              line("S", "a", "0", volts),
              resistor("RS", "a", "b", source),
              rectifier,
              capacitor("C1", "p", "0", first, { esrOhms: 1 }),
              inductor("L", "p", "q", henries, { dcrOhms: 200 }),
              capacitor("C2", "q", "0", second),
              resistor("RL", "q", "0", r),
            ),
          );
          const watts = [...steady.elements.values()].map((figures) => figures.watts);
          const delivered = -watts.filter((value) => value < 0).reduce((a, b) => a + b, 0);
          expect(Math.abs(watts.reduce((a, b) => a + b, 0))).toBeLessThan(2e-3 * delivered);
          expect(steady.currentResidual).toBeLessThan(1e-5);
          expect(Math.abs(steady.elements.get("C1")!.meanAmps)).toBeLessThan(1e-3 * steady.elements.get("C1")!.rmsAmps);
          const mean = steady.elements.get("D")!.meanAmps;
          expect(Math.abs(mean / steady.elements.get("RL")!.meanAmps - 1)).toBeLessThan(2e-3);
          // The choke may ring a point above the crest for a while, but not hold it there.
          expect(steady.points.get("p")!.meanVolts).toBeLessThan(Math.SQRT2 * volts);
        },
      ),
      { numRuns: 60, seed: 1954 },
    );
  });
});
