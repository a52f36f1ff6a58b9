/** Larger networks, too slow for the simulator: equal stages on one supply must come out equal, and the currents must balance. */
import { solveSteady } from "@underchassis/calc";
import { describe, expect, it } from "vitest";
import { supplyWithStages } from "./circuits/chassis.ts";

describe("a supply with many equal triode stages", () => {
  it.each([5, 8, 13])("%i stages", (stages) => {
    const solution = solveSteady(supplyWithStages(stages));
    const mean = (point: string): number => solution.points.get(point)?.meanVolts ?? Number.NaN;
    expect(solution.points.size).toBeGreaterThanOrEqual(6 + 4 * stages);
    expect(solution.currentResidual).toBeLessThan(1e-6);
    for (let k = 3; k <= stages; k += 1) {
      // Even stages are driven with the ripple of the odd ones; like is compared with like.
      const like = k % 2 === 0 ? 2 : 1;
      expect(Math.abs(mean(`plate${k}`) / mean(`plate${like}`) - 1), `plate${k}`).toBeLessThan(1e-5);
      expect(Math.abs(mean(`cathode${k}`) / mean(`cathode${like}`) - 1), `cathode${k}`).toBeLessThan(1e-5);
    }
    // Ohm's law down the common dropper: what flows in it is what the stages and the load take (Kirchhoff).
    const taken = Array.from({ length: stages }, (_, k) => (mean("B0") - mean(`B${k + 1}`)) / 10e3).reduce(
      (a, b) => a + b,
      mean("B0") / 6800,
    );
    expect(Math.abs((mean("rect") - mean("B0")) / 470 / taken - 1)).toBeLessThan(1e-5);
  });
});
