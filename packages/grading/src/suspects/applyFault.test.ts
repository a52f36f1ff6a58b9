import type { Element, Network, Transformer } from "@underchassis/calc";
import { describe, expect, it } from "vitest";
import { applyFault } from "./applyFault.ts";
import type { Fault } from "./fault.ts";

/** What a short or a solder bridge has, as the source says. */
const SHORT_OHMS = 0.1;

const transformer: Transformer = {
  kind: "transformer",
  id: "T1",
  windings: [
    { id: "primary", nodes: ["hot", "0"], turns: 120, ohms: 5 },
    { id: "hv", nodes: ["a", "0"], turns: 400, ohms: 200 },
  ],
};
const network: Network = {
  reference: "0",
  elements: [
    { kind: "voltage-source", id: "line", nodes: ["hot", "0"], rmsVolts: 120, hertz: 60 },
    transformer,
    { kind: "vacuum-diode", id: "V1/1", nodes: ["a", "k"], perveance: 3e-4 },
    { kind: "vacuum-diode", id: "V1/2", nodes: ["b", "k"], perveance: 3e-4 },
    { kind: "diode", id: "D1", nodes: ["a", "k"], saturationAmps: 1e-9, emission: 1.8, ohms: 0.05 },
    { kind: "capacitor", id: "C1", nodes: ["k", "0"], farads: 20e-6, leakOhms: 1e6 },
    { kind: "capacitor", id: "C2", nodes: ["p", "0"], farads: 10e-6 },
    { kind: "resistor", id: "R1", nodes: ["k", "p"], ohms: 1000 },
    { kind: "resistor", id: "R2", nodes: ["g", "0"], ohms: 470e3 },
    {
      kind: "triode",
      id: "V2",
      nodes: { plate: "p", grid: "g", cathode: "0" },
      parameters: { mu: 20, ex: 1.3, kg1: 1180, kp: 84, kvb: 300 },
    },
  ],
};

/** What differs from the network: elements that are new or changed, and ids that are gone. Untouched elements stay the same objects. */
function edit(fault: Omit<Fault, "part">): { now: Element[]; gone: string[] } | undefined {
  const changed = applyFault(network, { part: fault.element, ...fault });
  if (changed === undefined) return undefined;
  const ids = new Set(changed.elements.map(({ id }) => id));
  expect(ids.size).toBe(changed.elements.length);
  return {
    now: changed.elements.filter((element) => !network.elements.includes(element)),
    gone: network.elements.map(({ id }) => id).filter((id) => !ids.has(id)),
  };
}
const element = (id: string) => network.elements.find((each) => each.id === id)!;

describe("applyFault on two leads", () => {
  it("open and dead take the part out; a short leaves wire", () => {
    for (const [kind, id] of [
      ["open", "R1"],
      ["dead", "V2"],
    ] as const)
      expect(edit({ kind, element: id })).toEqual({ now: [], gone: [id] });
    expect(edit({ kind: "short", element: "C1" })?.now).toEqual([{ kind: "resistor", id: "C1", nodes: ["k", "0"], ohms: SHORT_OHMS }]);
  });

  it("a value takes the place of the right one; its ends are a short and an open part", () => {
    const ohms = (value: number) => edit({ kind: "wrong-value", element: "R1", parameter: "ohms", value });
    expect(ohms(2200)?.now).toEqual([{ ...element("R1"), ohms: 2200 }]);
    expect(ohms(0)?.now).toEqual([{ ...element("R1"), ohms: SHORT_OHMS }]);
    expect(ohms(Number.POSITIVE_INFINITY)).toEqual({ now: [], gone: ["R1"] });
    const farads = (value: number) => edit({ kind: "lost-capacity", element: "C1", parameter: "farads", value });
    expect(farads(2e-6)?.now).toEqual([{ ...element("C1"), farads: 2e-6 }]);
    expect(farads(0)?.gone).toEqual(["C1"]);
    expect(edit({ kind: "high-esr", element: "C1", parameter: "esrOhms", value: 40 })?.now).toEqual([{ ...element("C1"), esrOhms: 40 }]);
  });

  it("a leak lies beside the one that is there", () => {
    // 1 Mohm beside 250 kohm: 200 kohm.
    const [leaky] = edit({ kind: "leaky", element: "C1", parameter: "leakOhms", value: 250e3 })!.now;
    expect((leaky as { leakOhms: number }).leakOhms).toBeCloseTo(200e3, 6);
    expect(edit({ kind: "leaky", element: "C2", parameter: "leakOhms", value: 250e3 })?.now).toEqual([
      { ...element("C2"), leakOhms: 250e3 },
    ]);
  });

  it("reversed swaps the leads", () => {
    expect(edit({ kind: "reversed", element: "D1" })?.now).toEqual([{ ...element("D1"), nodes: ["k", "a"] }]);
  });

  it("exchanged swaps both values and leaves both leads", () => {
    const { now, gone } = edit({ kind: "exchanged", element: "R1", with: "R2" })!;
    expect(now).toEqual([
      { ...element("R1"), ohms: 470e3 },
      { ...element("R2"), ohms: 1000 },
    ]);
    expect(gone).toEqual([]);
    expect(edit({ kind: "exchanged", element: "R1", with: "C1" })).toBeUndefined();
    expect(edit({ kind: "exchanged", element: "R1", with: "nothing" })).toBeUndefined();
  });

  it("a moved lead lies where it was put; on the part's own point the part is gone", () => {
    const move = (lead: string, to: string) => edit({ kind: "moved-lead", element: "R1", lead, to });
    expect(move("0", "a")?.now).toEqual([{ ...element("R1"), nodes: ["a", "p"] }]);
    expect(move("1", "a")?.now).toEqual([{ ...element("R1"), nodes: ["k", "a"] }]);
    expect(move("1", "k")).toEqual({ now: [], gone: ["R1"] });
    const grid = edit({ kind: "moved-lead", element: "V2", lead: "grid", to: "k" });
    expect(grid?.now).toEqual([{ ...element("V2"), nodes: { plate: "p", grid: "k", cathode: "0" } }]);
  });

  it("a bridge joins two points with its resistance, or with none", () => {
    const bridge = (to: string, value: number) =>
      applyFault(network, { kind: "bridge", part: "k", element: "k", to, parameter: "ohms", value });
    const added = bridge("g", 5000)!.elements.at(-1)!;
    expect(added).toMatchObject({ kind: "resistor", nodes: ["k", "g"], ohms: 5000 });
    expect(bridge("g", 0)!.elements.at(-1)).toMatchObject({ ohms: SHORT_OHMS });
    expect(bridge("k", 0)).toBeUndefined();
  });

  it("the line has its voltage", () => {
    expect(edit({ kind: "line-voltage", element: "line", parameter: "rmsVolts", value: 105 })?.now).toEqual([
      { ...element("line"), rmsVolts: 105 },
    ]);
  });
});

describe("applyFault on tubes", () => {
  it("weak: a share of the emission that it has", () => {
    const weak = (id: string, also?: string[]) =>
      edit({ kind: "weak", element: id, parameter: "emission", value: 0.4, ...(also && { also }) })?.now;
    expect(weak("V2")).toEqual([{ ...element("V2"), emission: 0.4 }]);
    // Both sections of a rectifier at once.
    const both = ["V1/1", "V1/2"].map((id) => ({ ...element(id), perveance: 3e-4 * 0.4 }));
    expect(weak("V1/1", ["V1/2"])).toEqual(both);
  });

  it("both sections of a rectifier: dead, or their cathode's lead moved", () => {
    expect(edit({ kind: "dead", element: "V1/1", also: ["V1/2"] })?.gone).toEqual(["V1/1", "V1/2"]);
    const moved = edit({ kind: "moved-lead", element: "V1/1", lead: "1", to: "p", also: ["V1/2"] })?.now;
    expect(moved?.map((each) => each.kind === "vacuum-diode" && each.nodes)).toEqual([
      ["a", "p"],
      ["b", "p"],
    ]);
    // A section that is not there leaves the other to fail.
    expect(edit({ kind: "dead", element: "V1/1", also: ["V1/3"] })?.gone).toEqual(["V1/1"]);
    expect(edit({ kind: "dead", element: "V1/4", also: ["V1/3"] })).toBeUndefined();
  });

  it("gas and shorted electrodes are resistances beside the tube", () => {
    expect(edit({ kind: "gassy", element: "V2", parameter: "gridOhms", value: 1e6 })?.now).toMatchObject([
      { nodes: ["p", "g"], ohms: 1e6 },
    ]);
    expect(edit({ kind: "gassy", element: "R1", value: 1e6 })).toBeUndefined();
    expect(edit({ kind: "electrode-short", element: "V2", lead: "grid-cathode" })?.now).toMatchObject([
      { nodes: ["g", "0"], ohms: SHORT_OHMS },
    ]);
    const heater = edit({ kind: "electrode-short", element: "V2", lead: "cathode-heater", to: "k", value: 100 });
    expect(heater?.now).toMatchObject([{ nodes: ["0", "k"], ohms: 100 }]);
    expect(edit({ kind: "electrode-short", element: "V2", lead: "cathode-heater", to: "0" })).toBeUndefined();
  });
});

describe("applyFault on windings", () => {
  const windings = (fault: Omit<Fault, "part">) =>
    edit(fault)?.now.flatMap((each) => (each.kind === "transformer" ? each.windings : [])) ?? [];

  it("an open secondary is gone; without its primary the rest is wire", () => {
    expect(windings({ kind: "open", element: "T1.hv" })).toEqual([transformer.windings[0]]);
    const open = edit({ kind: "open", element: "T1.primary" })!;
    expect(open).toEqual({ now: [{ kind: "resistor", id: "T1.hv", nodes: ["a", "0"], ohms: 200 }], gone: ["T1"] });
  });

  it("shorted turns shorten the winding, keep the total of turns and wire, and close on themselves", () => {
    const fault = { kind: "shorted-turns", element: "T1.hv", parameter: "turns", value: 0.05 } as const;
    const [, rest, turns] = windings(fault);
    expect([rest!.turns, turns!.turns, rest!.ohms, turns!.ohms]).toEqual([380, 20, 190, 10]);
    expect(rest!.nodes).toEqual(["a", "0"]);
    expect(edit(fault)?.now.find(({ kind }) => kind === "resistor")).toMatchObject({ nodes: turns!.nodes, ohms: 1e-3 });
  });

  it("a lead of a winding moves; onto its own other end it does not", () => {
    expect(windings({ kind: "moved-lead", element: "T1.hv", lead: "0", to: "b" })[1]?.nodes).toEqual(["b", "0"]);
    expect(edit({ kind: "moved-lead", element: "T1.hv", lead: "0", to: "0" })).toBeUndefined();
  });
});

it("a part that is not there gives nothing", () => {
  for (const kind of ["open", "short", "reversed", "moved-lead", "gassy", "wrong-value"] as const)
    expect(edit({ kind, element: "R9", lead: "0", to: "a", parameter: "ohms", value: 1 })).toBeUndefined();
  expect(edit({ kind: "open", element: "T1.heater" })).toBeUndefined();
  expect(edit({ kind: "wrong-value", element: "R1" })).toBeUndefined();
});
