import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Element, Network } from "./network.ts";
import { ohmmeter } from "./ohmmeter.ts";
import { ohmsFamily } from "./ohms-family.ts";
import { CircuitError } from "./solution.ts";
import { capacitor, inductor, line, network, resistor, silicon, vacuum } from "./test-parts.ts";

const POINTS = ["0", "a", "b", "c", "d", "e"];

/** Random resistors between six points, with a capacitor and a rectifier that no meter of 0.3 V turns on. */
const networks = fc
  .array(fc.tuple(fc.nat(5), fc.nat(5), fc.double({ min: 0, max: 5, noNaN: true })), { minLength: 6, maxLength: 14 })
  .map((wires): Network => {
    const resistors = wires.filter(([a, b]) => a !== b).map(([a, b, decade], k) => resistor(`R${k}`, POINTS[a]!, POINTS[b]!, 10 ** decade));
    return network(...resistors, capacitor("C", "a", "0", 1e-6), silicon("D", "b", "c"), resistor("last", "0", "a", 1e4));
  });

const pairs = POINTS.flatMap((from, k) => POINTS.slice(k + 1).map((to) => [from, to] as const));

function readings(changed: Network): (number | string)[] {
  return pairs.map(([from, to]) => {
    try {
      return ohmmeter(changed, from, to).ohms;
    } catch (error) {
      if (error instanceof CircuitError) return error.code;
      throw error;
    }
  });
}

describe("ohmsFamily", () => {
  it("agrees with the ohmmeter on random networks with one or two resistors drifted, taken out, added or moved", () => {
    const property = fc.property(
      networks,
      fc.nat(20),
      fc.constantFrom("drift", "open", "short", "moved", "two"),
      fc.double({ min: 0.2, max: 5, noNaN: true }),
      (base, pick, kind, factor) => {
        const all = base.elements.filter((element) => element.kind === "resistor");
        const chosen = all[pick % all.length]!;
        const other = all[(pick + 1) % all.length]!;
        const swap = (element: Element, by: Element[]): Element[] =>
          base.elements.flatMap((candidate) => (candidate === element ? by : [candidate]));
        let elements: Element[];
        if (kind === "drift") elements = swap(chosen, [{ ...chosen, ohms: chosen.ohms * factor }]);
        else if (kind === "open") elements = swap(chosen, []);
        else if (kind === "short") elements = [...base.elements, resistor("short", chosen.nodes[0], chosen.nodes[1], 0.5)];
        else if (kind === "moved") elements = swap(chosen, [{ ...chosen, nodes: [chosen.nodes[0], POINTS[pick % 6]!] }]);
        else {
          elements = base.elements.map((element) =>
            element === chosen || element === other
              ? { ...(element as typeof chosen), ohms: (element as typeof chosen).ohms * factor }
              : element,
          );
        }
        const changed = { ...base, elements };
        const wanted = [readings(base), readings(changed)];
        if (wanted.some((list) => list.some((value) => typeof value === "string"))) return;
        const family = ohmsFamily(base, pairs);
        [family.base, family.ohms(changed)].forEach((found, which) => {
          pairs.forEach(([from, to], k) => {
            const expected = wanted[which]![k] as number;
            if (!Number.isFinite(expected)) expect(found[k], `${from}-${to}`).toBe(expected);
            // Both are sums of parts up to 100 kohm: their rounding shows in what is small against that.
            else expect(Math.abs(found[k]! - expected), `${from}-${to}`).toBeLessThan(1e-9 * expected + 1e-9);
          });
        });
      },
    );
    fc.assert(property, { numRuns: 150, seed: 3 });
  });

  it("reads a chassis with windings, a choke, a vacuum rectifier and a leaking capacitor as the ohmmeter does", () => {
    const base = network(
      line("line", "hot", "0", 117),
      {
        kind: "transformer",
        id: "T",
        windings: [
          { id: "p", nodes: ["hot", "0"], turns: 1, ohms: 6 },
          { id: "s", nodes: ["x", "0"], turns: 3, ohms: 150 },
        ],
      },
      vacuum("V", "x", "k"),
      capacitor("C1", "k", "0", 1e-5, { leakOhms: 3e5 }),
      inductor("L", "k", "B", 10, { dcrOhms: 240 }),
      resistor("Rb", "B", "0", 22e3),
    );
    const asked = [
      ["k", "0"],
      ["B", "k"],
      ["x", "0"],
      ["hot", "0"],
      ["B", "0"],
      ["x", "k"],
    ] as const;
    const family = ohmsFamily(base, asked);
    const swapped = (id: string, by: Element[]): Network => ({
      ...base,
      elements: base.elements.flatMap((element) => (element.id === id ? by : [element])),
    });
    for (const changed of [
      swapped("Rb", []),
      swapped("L", []),
      swapped("L", [inductor("L", "k", "0", 10, { dcrOhms: 240 })]),
      swapped("C1", [capacitor("C1", "k", "0", 1e-5, { leakOhms: 2e3 })]),
      swapped("V", [resistor("V", "x", "k", 0.5)]),
      swapped("Rb", [resistor("Rb", "B", "new", 22e3), resistor("joint", "new", "0", 10)]),
    ]) {
      const found = family.ohms(changed);
      asked.forEach(([from, to], k) => {
        const expected = ohmmeter(changed, from, to).ohms;
        if (Number.isFinite(expected)) expect(Math.abs(found[k]! / expected - 1), `${from}-${to}`).toBeLessThan(1e-9);
        else expect(found[k]).toBe(expected);
      });
    }
  });

  it("counts a junction that the meter turns on", () => {
    const base = network(silicon("D", "a", "0"), resistor("R", "a", "0", 10e3), resistor("S", "a", "b", 100));
    const family = ohmsFamily(
      base,
      [
        ["a", "0"],
        ["b", "0"],
      ],
      { testVolts: 2 },
    );
    const changed = { ...base, elements: base.elements.map((element) => (element.id === "S" ? resistor("S", "a", "b", 300) : element)) };
    expect(family.ohms(changed)).toEqual(
      [
        ["a", "0"],
        ["b", "0"],
      ].map(([from, to]) => ohmmeter(changed, from!, to!, { testVolts: 2 }).ohms),
    );
    expect(family.base[0]).toBeLessThan(5000);
  });
});
