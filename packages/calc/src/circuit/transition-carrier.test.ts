import { describe, expect, it } from "vitest";
import { compileNetwork } from "./compile.ts";
import { evenPlan, Marcher } from "./march.ts";
import type { Element, Network } from "./network.ts";
import { solveSteady } from "./steady.ts";
import { SteadySolution } from "./steady-solution.ts";
import { capacitor, inductor, line, network, resistor, silicon, vacuum } from "./test-parts.ts";

const supply = (rectifier: (id: string, a: string, b: string) => Element): Network =>
  network(
    line("S", "a", "0", 250),
    resistor("Rs", "a", "b", 150),
    rectifier("D", "b", "k"),
    capacitor("C1", "k", "0", 10e-6),
    inductor("L", "k", "q", 8, { dcrOhms: 250 }),
    capacitor("C2", "q", "0", 20e-6),
    resistor("R", "q", "0", 6800),
  );

const plan = evenPlan(60, 192);

/** The marcher and the periodic state of a supply. */
function settled(circuit: Network): { marcher: Marcher; state: Float64Array } {
  const solution = solveSteady(circuit);
  if (!(solution instanceof SteadySolution)) throw new Error("not a solution of this engine");
  const marcher = new Marcher(compileNetwork(circuit, { ohms: new Map(), lit: new Set() }));
  return { marcher, state: solution.internals.state };
}

/** d end / d start by central differences of whole marches. */
function differences(marcher: Marcher, start: Float64Array): Float64Array {
  const size = start.length;
  const out = new Float64Array(size * size);
  for (let column = 0; column < size; column++) {
    const step = 1e-4 * Math.max(1e-3, Math.abs(start[column]!));
    const ends = [1, -1].map((sign) => {
      const state = Float64Array.from(start);
      state[column] = state[column]! + sign * step;
      marcher.march(plan, state, 0);
      return state;
    });
    for (let row = 0; row < size; row++) out[row * size + column] = (ends[0]![row]! - ends[1]![row]!) / (2 * step);
  }
  return out;
}

describe("TransitionCarrier", () => {
  it.each([
    ["vacuum", vacuum],
    ["silicon", silicon],
  ] as const)("agrees with differences of whole marches, counted steps included (%s)", (_, rectifier) => {
    const { marcher, state } = settled(supply(rectifier));
    const expected = differences(marcher, state);
    const transition = new Float64Array(expected.length);
    for (let again = 0; again < 2; again++) {
      marcher.march(plan, Float64Array.from(state), 0, transition);
      // Volts per ampere stand beside amperes per volt: each entry is judged in volts and amperes as they occur here.
      const scale = [100, 0.05, 100];
      const order = marcher.circuit.states.map(({ kind }) => (kind === "volts" ? scale[0]! : scale[1]!));
      expected.forEach((value, k) => {
        const [row, column] = [Math.floor(k / state.length), k % state.length];
        expect(Math.abs(transition[k]! - value) * (order[column]! / order[row]!)).toBeLessThan(2e-3);
      });
    }
  });

  it("has the exact answer for a decay: exp(-T/RC)", () => {
    const circuit = network(
      line("S", "a", "0", 10),
      resistor("Ra", "a", "0", 1e3),
      capacitor("C", "k", "0", 10e-6),
      resistor("R", "k", "0", 10e3),
    );
    const marcher = new Marcher(compileNetwork(circuit, { ohms: new Map(), lit: new Set() }));
    const transition = new Float64Array(1);
    marcher.march(plan, Float64Array.of(50), 0, transition);
    // Second-order scheme at T/(192 RC) = 8.7e-4: error below 1e-8.
    expect(transition[0]).toBeCloseTo(Math.exp(-1 / 60 / 0.1), 7);
    const record = marcher.emptyTrajectory(plan);
    marcher.march(plan, Float64Array.of(50), 0, undefined, record);
    expect(marcher.meanTransition(plan, record)![0]).toBeCloseTo(Math.exp(-1 / 60 / 0.1), 7);
  });
});
