import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { compileNetwork } from "./compile.ts";
import { evenPlan, Marcher } from "./march.ts";
import type { Network, Triode } from "./network.ts";
import { QuietFold } from "./quiet-fold.ts";
import { quietStart } from "./quiet-start.ts";
import { shoot } from "./shooting.ts";
import { solveSteady } from "./steady.ts";
import { SteadySolution } from "./steady-solution.ts";
import { capacitor, line, network, resistor, silicon, vacuum } from "./test-parts.ts";

/** 12AX7 by Koren's equations (Glass Audio 8(5), 1996). */
const triode = (id: string, plate: string, grid: string, cathode: string): Triode => ({
  kind: "triode",
  id,
  nodes: { plate, grid, cathode },
  parameters: { mu: 100, ex: 1.4, kg1: 1060, kp: 600, kvb: 300, gridOhms: 2000 },
});

/** Half-wave supply with two resistance-coupled stages. */
const chassis = (scale: readonly number[], tubeRectifier: boolean): Network =>
  network(
    line("S", "a", "0", 230 * scale[0]!),
    resistor("Rs", "a", "b", 100),
    tubeRectifier ? vacuum("D", "b", "k", 3e-4) : silicon("D", "b", "k"),
    capacitor("C1", "k", "0", 20e-6 * scale[1]!),
    resistor("R1", "k", "p", 4700 * scale[2]!),
    capacitor("C2", "p", "0", 20e-6),
    resistor("Rl", "p", "0", 22e3),
    ...[1, 2].flatMap((n) => [
      resistor(`Rp${n}`, "p", `plate${n}`, 100e3 * scale[3]!),
      triode(`V${n}`, `plate${n}`, `grid${n}`, `cathode${n}`),
      resistor(`Rk${n}`, `cathode${n}`, "0", 1500 * scale[4]!),
      capacitor(`Ck${n}`, `cathode${n}`, "0", 25e-6),
      resistor(`Rg${n}`, `grid${n}`, "0", 470e3),
    ]),
    capacitor("Cc", "plate1", "grid2", 22e-9),
  );

const HERTZ = 60;
const plan = evenPlan(HERTZ, 192);

/** The periodic state by shooting with the whole circuit and its own transition matrices, nothing folded. */
function plainState(circuit: Network): Float64Array {
  const marcher = new Marcher(compileNetwork(circuit, { ohms: new Map(), lit: new Set() }));
  const state = new Float64Array(marcher.states);
  return shoot(marcher, plan, state, { tolerance: 1e-9, maxIterations: 120 }).state;
}

const factor = fc.double({ min: 0.6, max: 1.6, noNaN: true });

describe("quietStart", () => {
  it("leads to the state that the plain path finds, within 1e-6", () => {
    fc.assert(
      fc.property(fc.tuple(factor, factor, factor, factor, factor), fc.boolean(), (scale, tubeRectifier) => {
        const circuit = chassis(scale, tubeRectifier);
        const expected = plainState(circuit);
        const solution = solveSteady(circuit, { tolerance: 1e-7 });
        if (!(solution instanceof SteadySolution)) throw new Error("not a solution of this engine");
        const { state } = solution.internals;
        expect(state.length).toBe(expected.length);
        state.forEach((value, k) => {
          expect(Math.abs(value - expected[k]!)).toBeLessThan(1e-6 * Math.max(1, Math.abs(expected[k]!)));
        });
      }),
      { numRuns: 12, seed: 7 },
    );
  });

  it("leaves the whole circuit two periods to march", () => {
    const circuit = chassis([1, 1, 1, 1, 1], true);
    expect(solveSteady(circuit).iterations).toBeLessThanOrEqual(4);
  });

  it("does nothing for a circuit without quiet ports", () => {
    const circuit = network(line("S", "a", "0", 100), silicon("D", "a", "k"), capacitor("C", "k", "0", 1e-5), resistor("R", "k", "0", 1e4));
    const marcher = new Marcher(compileNetwork(circuit, { ohms: new Map(), lit: new Set() }));
    const state = new Float64Array(marcher.states);
    expect(QuietFold.of(marcher)).toBeUndefined();
    expect(quietStart(marcher, plan, state, 1e-6, marcher.emptyTrajectory(plan), {})).toBeUndefined();
    expect([...state]).toEqual([0]);
  });

  it("distrusts a tube that is driven", () => {
    const tube = (rmsVolts: number) =>
      network(
        { kind: "voltage-source", id: "B", nodes: ["p", "0"], dcVolts: 250 },
        resistor("Rp", "p", "plate1", 100e3),
        triode("V1", "plate1", "grid1", "cathode1"),
        resistor("Rk", "cathode1", "0", 1500),
        line("G", "grid1", "0", rmsVolts),
      );
    const trusted = (rmsVolts: number): boolean | undefined => {
      const marcher = new Marcher(compileNetwork(tube(rmsVolts), { ohms: new Map(), lit: new Set() }));
      const state = new Float64Array(marcher.states);
      const record = marcher.emptyTrajectory(plan);
      const start = quietStart(marcher, plan, state, 1e-6, record, {});
      marcher.march(plan, state, 0, undefined, record);
      return start?.trusted();
    };
    expect(trusted(1e-4)).toBe(true);
    expect(trusted(1)).toBe(false);
  });
});
