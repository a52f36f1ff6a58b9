import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Element, Network } from "../network.ts";
import { CircuitError, type SteadyState } from "../solution.ts";
import { solveSteady } from "../steady.ts";
import { battery, capacitor, inductor, line, network, resistor, silicon, vacuum } from "../test-parts.ts";
import { changedSolver } from "./changed-solver.ts";

/** Steps of a period that a fine family takes for sources of one frequency; a solution with the same steps is its yardstick. */
const FINE = { stepsPerPeriod: 48 };

/** A transformer supply with a filter of one or two sections, a tap and a triode stage. Values common-practice. */
function supply(volts: number, first: number, ohms: number, load: number, choke: boolean, tube: boolean): Network {
  const parts: Element[] = [
    line("line", "hot", "0", 117),
    {
      kind: "transformer",
      id: "T1",
      windings: [
        { id: "primary", nodes: ["hot", "0"], turns: 117, ohms: 8 },
        { id: "upper", nodes: ["a", "0"], turns: volts, ohms: 110 },
        { id: "lower", nodes: ["0", "b"], turns: volts, ohms: 120 },
      ],
      magnetizingHenries: 8,
    },
    vacuum("V1a", "a", "k"),
    vacuum("V1b", "b", "k"),
    capacitor("C1", "k", "0", first, { esrOhms: 2 }),
    choke ? inductor("L1", "k", "B", 10, { dcrOhms: ohms / 5 }) : resistor("L1", "k", "B", ohms),
    capacitor("C2", "B", "0", 20e-6, { leakOhms: 2e6 }),
    resistor("R1", "B", "C", 22e3),
    capacitor("C3", "C", "0", 10e-6),
    resistor("R2", "C", "0", 150e3),
    resistor("Rload", "B", "0", load),
  ];
  if (tube) {
    parts.push(resistor("Rp", "C", "p", 100e3), resistor("Rk", "kk", "0", 1500), resistor("Rg", "g", "0", 470e3), {
      kind: "triode",
      id: "V2",
      nodes: { plate: "p", grid: "g", cathode: "kk" },
      parameters: { mu: 100, ex: 1.4, kg1: 1060, kp: 600, kvb: 300, gridOhms: 2000 },
    });
  }
  return network(...parts);
}

const supplies = fc
  .tuple(fc.integer({ min: 150, max: 400 }), fc.double({ min: 4e-6, max: 47e-6, noNaN: true }), fc.integer({ min: 200, max: 2500 }))
  .chain(([volts, first, ohms]) =>
    fc
      .tuple(fc.integer({ min: 3000, max: 20000 }), fc.boolean(), fc.boolean())
      .map(([load, choke, tube]) => supply(volts, first, ohms, load, choke, tube)),
  );

type Change = (base: Network, pick: number, factor: number) => Network;

const replace = (base: Network, id: string, ...by: Element[]): Network => ({
  ...base,
  elements: base.elements.flatMap((element) => (element.id === id ? by : [element])),
});
const twoLead = (base: Network, pick: number): Element & { nodes: readonly [string, string] } => {
  const all = base.elements.filter((element) => "nodes" in element && Array.isArray(element.nodes) && element.kind !== "voltage-source");
  return all[pick % all.length] as Element & { nodes: readonly [string, string] };
};
const pointNames = ["a", "b", "k", "B", "C", "0", "hot"];

/** One of each kind of change that a search for faults makes. */
const changes: Record<string, Change> = {
  "a drifted resistor": (base, pick, factor) => {
    const all = base.elements.filter((element) => element.kind === "resistor");
    const element = all[pick % all.length]!;
    return replace(base, element.id, { ...element, ohms: element.ohms * factor });
  },
  "a drifted capacitor": (base, pick, factor) => {
    const all = base.elements.filter((element) => element.kind === "capacitor");
    const element = all[pick % all.length]!;
    return replace(base, element.id, { ...element, farads: element.farads * factor });
  },
  "a part taken out": (base, pick) => replace(base, twoLead(base, pick).id),
  "a short added": (base, pick) => {
    const { nodes } = twoLead(base, pick);
    return { ...base, elements: [...base.elements, resistor("short", nodes[0], nodes[1], 0.5)] };
  },
  "a leak in a capacitor": (base, pick, factor) => {
    const all = base.elements.filter((element) => element.kind === "capacitor");
    const element = all[pick % all.length]!;
    return replace(base, element.id, { ...element, leakOhms: 20e3 * factor });
  },
  "a lead landed on another point": (base, pick) => {
    const element = twoLead(base, pick);
    return replace(base, element.id, { ...element, nodes: [element.nodes[0], pointNames[pick % pointNames.length]!] } as Element);
  },
  "a lead on a new point": (base, pick) => {
    const element = twoLead(base, pick);
    return replace(
      base,
      element.id,
      { ...element, nodes: [element.nodes[0], "new"] } as Element,
      resistor("joint", "new", element.nodes[1], 47),
    );
  },
  "a part reversed": (base, pick) => {
    const element = twoLead(base, pick);
    return replace(base, element.id, { ...element, nodes: [element.nodes[1], element.nodes[0]] } as Element);
  },
  "a weak rectifier": (base, pick, factor) => {
    const id = pick % 2 === 0 ? "V1a" : "V1b";
    return replace(base, id, {
      ...(base.elements.find((element) => element.id === id) as ReturnType<typeof vacuum>),
      perveance: 3.5e-4 * factor,
    });
  },
  "a rectifier of another kind": (base, pick) =>
    replace(base, pick % 2 === 0 ? "V1a" : "V1b", silicon(pick % 2 === 0 ? "V1a" : "V1b", pick % 2 === 0 ? "a" : "b", "k")),
  "another line voltage": (base, _, factor) => replace(base, "line", line("line", "hot", "0", 117 * Math.min(1.3, factor))),
  "a dead tube": (base) => replace(base, "V2"),
};

/** Largest difference of a point's mean as a share of its RMS voltage, and of its ripple peak to peak and RMS; of 1 V, 50 mV and 20 mV at least. */
function differences(found: SteadyState, expected: SteadyState): { mean: number; ripple: number; alternating: number } {
  let [mean, ripple, alternating] = [0, 0, 0];
  expect([...found.points.keys()].sort()).toEqual([...expected.points.keys()].sort());
  for (const [point, figures] of expected.points) {
    const own = found.points.get(point)!;
    mean = Math.max(mean, Math.abs(own.meanVolts - figures.meanVolts) / Math.max(1, figures.rmsVolts));
    const swing = figures.maxVolts - figures.minVolts;
    ripple = Math.max(ripple, Math.abs(own.maxVolts - own.minVolts - swing) / Math.max(0.05, swing));
    alternating = Math.max(alternating, Math.abs(own.acRmsVolts - figures.acRmsVolts) / Math.max(0.02, figures.acRmsVolts));
  }
  return { mean, ripple, alternating };
}

function solved(solve: () => SteadyState): SteadyState | string {
  try {
    return solve();
  } catch (error) {
    if (error instanceof CircuitError) return error.code;
    throw error;
  }
}

describe("changedSolver", () => {
  for (const [name, change] of Object.entries(changes)) {
    it(`agrees with solveSteady on ${name}`, () => {
      const run = fc.property(supplies, fc.nat(30), fc.double({ min: 0.2, max: 4, noNaN: true }), (base, pick, factor) => {
        const changed = change(base, pick, factor);
        const expected = solved(() => solveSteady(changed, FINE));
        const found = solved(() => changedSolver(base).solve(changed));
        if (typeof expected === "string" || typeof found === "string") {
          expect(found).toEqual(expected);
          return;
        }
        const { mean, ripple } = differences(found, expected);
        expect(mean).toBeLessThan(1e-4);
        expect(ripple).toBeLessThan(5e-3);
      });
      fc.assert(run, { numRuns: 12, seed: 7 });
    });
  }

  it("gives a coarse answer within 1 % of each point's volts and 10 % of its ripple", () => {
    const base = supply(300, 16e-6, 1000, 6000, true, true);
    const family = changedSolver(base, { coarse: true });
    for (const [name, change] of Object.entries(changes)) {
      for (const pick of [0, 3, 4, 5]) {
        const changed = change(base, pick, 0.5);
        const [expected, found] = [solved(() => solveSteady(changed)), solved(() => family.solve(changed))];
        if (typeof expected === "string" || typeof found === "string") {
          expect(found, name).toEqual(expected);
          continue;
        }
        const { alternating } = differences(found, expected);
        // What is left of two nearly equal halves is known no better than the halves are.
        const highest = Math.max(...[...expected.points.values()].map(({ rmsVolts }) => rmsVolts));
        for (const [point, { meanVolts, rmsVolts }] of expected.points) {
          const allowed = Math.max(0.01 * rmsVolts, 1e-3 * highest, 0.01);
          expect(Math.abs(found.points.get(point)!.meanVolts - meanVolts), `${name} ${pick} ${point}`).toBeLessThan(allowed);
        }
        expect(alternating, `${name} ${pick}`).toBeLessThan(0.1);
      }
    }
  });

  it("solves most changes from the base", () => {
    const base = supply(300, 16e-6, 1000, 6000, false, true);
    const family = changedSolver(base);
    for (const element of base.elements) {
      if (element.kind !== "resistor") continue;
      family.solve(replace(base, element.id, { ...element, ohms: element.ohms * 1.3 }));
    }
    expect(family.counts.whole).toBe(0);
  });

  it("tells currents of elements as solveSteady does, and the rest of a steady state", () => {
    const base = supply(300, 16e-6, 1000, 6000, true, true);
    const changed = changes["a drifted capacitor"]!(base, 1, 0.3);
    const found = changedSolver(base).solve(changed);
    const expected = solveSteady(changed, FINE);
    for (const element of ["R1", "L1", "C1", "C2", "V1a", "V2", "T1.primary", "T1.upper", "line"]) {
      for (const quantity of ["dc-amps", "rms-amps"] as const) {
        const wanted = expected.read({ quantity, element });
        expect(Math.abs(found.read({ quantity, element }) - wanted), `${quantity} ${element}`).toBeLessThan(1e-4 * Math.abs(wanted) + 1e-7);
      }
    }
    expect(found.currentResidual).toBeLessThan(1e-4);
    for (const [id, figures] of expected.elements)
      expect(Math.abs(found.elements.get(id)!.watts - figures.watts), id).toBeLessThan(1e-3 * Math.abs(figures.watts) + 1e-5);
    expect(found.waveforms!.volts.get("B")!.length).toBe(48);
  });

  it("follows lamps, and regulator tubes that strike or go dark", () => {
    const base = network(
      line("line", "x", "0", 250),
      { kind: "filament", id: "lamp", nodes: ["x", "a"], coldOhms: 30, ratedOhms: 300, ratedAmps: 0.2 },
      silicon("D", "a", "k"),
      capacitor("C1", "k", "0", 20e-6),
      resistor("Rs", "k", "reg", 6800),
      {
        kind: "gas-regulator",
        id: "VR",
        nodes: ["reg", "0"],
        strikeVolts: 180,
        operatingVolts: 150,
        slopeOhms: 100,
        extinguishAmps: 0.005,
      },
      resistor("Rl", "reg", "0", 22e3),
    );
    const family = changedSolver(base);
    for (const [id, by] of [
      ["Rl", resistor("Rl", "reg", "0", 3000)],
      ["C1", capacitor("C1", "k", "0", 4e-6)],
      ["line", line("line", "x", "0", 100)],
      ["Rs", resistor("Rs", "k", "reg", 10e3)],
    ] as const) {
      const changed = replace(base, id, by);
      const [found, expected] = [family.solve(changed), solveSteady(changed, FINE)];
      expect(differences(found, expected).mean, id).toBeLessThan(1e-4);
      expect(found.elements.get("VR")!.state).toEqual(expected.elements.get("VR")!.state);
    }
  });

  it("passes a constant network, and one of another frequency, on to solveSteady", () => {
    const base = network(battery("E", "x", "0", 100), resistor("R1", "x", "y", 1000), resistor("R2", "y", "0", 1000));
    const changed = replace(base, "R2", resistor("R2", "y", "0", 3000));
    expect(changedSolver(base).solve(changed).points.get("y")!.meanVolts).toBeCloseTo(75, 9);
    const alternating = network(
      line("E", "x", "0", 100),
      silicon("D", "x", "y"),
      capacitor("C", "y", "0", 1e-5),
      resistor("R", "y", "0", 1e4),
    );
    const fifty = replace(alternating, "E", line("E", "x", "0", 100, 50));
    expect(changedSolver(alternating).solve(fifty).hertz).toBe(50);
  });
});
