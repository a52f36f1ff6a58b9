import { describe, expect, it } from "vitest";
import { meanResponse } from "./mean-response.ts";
import type { Element, Network, Triode } from "./network.ts";
import { solveSteady } from "./steady.ts";
import { battery, capacitor, line, resistor, silicon } from "./test-parts.ts";

/** Koren's parameters of a high-mu triode of the 12AX7's order. */
const triode: Triode = {
  kind: "triode",
  id: "V1",
  nodes: { plate: "plate", grid: "grid", cathode: "cathode" },
  parameters: { mu: 100, ex: 1.4, kg1: 1060, kp: 600, kvb: 300, gridOhms: 2000 },
};
const stage: Network = {
  reference: "0",
  elements: [
    battery("B", "B+", "0", 250),
    resistor("Rp", "B+", "plate", 1e5),
    resistor("Rk", "cathode", "0", 1500),
    resistor("Rg", "grid", "0", 1e6),
    triode,
  ],
};

const replaced = (network: Network, id: string, ...by: Element[]): Network => ({
  ...network,
  elements: network.elements.flatMap((element) => (element.id === id ? by : [element])),
});

describe("mean response of a stage without rectifiers", () => {
  const response = meanResponse(stage, solveSteady(stage));
  const changes: [string, Network][] = [
    ["nothing", stage],
    ["a plate load of half the value", replaced(stage, "Rp", resistor("Rp", "B+", "plate", 5e4))],
    ["a cathode resistor that is shorted", replaced(stage, "Rk", resistor("Rk", "cathode", "0", 0.1))],
    ["no tube", replaced(stage, "V1")],
    ["a weak tube", replaced(stage, "V1", { ...triode, emission: 0.4 })],
    ["gas", { ...stage, elements: [...stage.elements, resistor("gas", "plate", "grid", 2e7)] }],
    ["a leak onto the grid", { ...stage, elements: [...stage.elements, resistor("leak", "B+", "grid", 1e7)] }],
    ["the grid leak's lead on B+", replaced(stage, "Rg", resistor("Rg", "grid", "B+", 1e6))],
    ["the tube's grid on its plate", replaced(stage, "V1", { ...triode, nodes: { ...triode.nodes, grid: "plate" } })],
  ];

  it.each(changes)("follows %s along the tube's whole curve", (_, network) => {
    const volts = response.changed(network);
    const whole = solveSteady(network, { islands: "tie" });
    for (const [point, index] of response.points) {
      if (!whole.points.has(point)) continue;
      // Newton's method stops within a thousandth of a port's voltage.
      expect(Math.abs((volts?.[index] ?? Number.NaN) - (whole.points.get(point)?.meanVolts ?? 0)), point).toBeLessThan(0.4);
    }
  });

  it("knows nothing of other sources and of points that are not there", () => {
    expect(response.changed(replaced(stage, "B", battery("B", "B+", "0", 300)))).toBeUndefined();
    expect(response.changed({ ...stage, elements: [...stage.elements, resistor("R", "B+", "elsewhere", 1e3)] })).toBeUndefined();
  });
});

describe("mean response of a rectifier supply", () => {
  const supply: Network = {
    reference: "0",
    elements: [
      line("AC", "hv", "0", 200),
      resistor("Rs", "hv", "anode", 150),
      silicon("D", "anode", "raw"),
      capacitor("C1", "raw", "0", 2e-5),
      resistor("R1", "raw", "B+", 2200),
      capacitor("C2", "B+", "0", 2e-5),
      resistor("R2", "B+", "0", 47e3),
    ],
  };
  const options = { hertz: 60, stepsPerPeriod: 96 };
  const response = meanResponse(supply, solveSteady(supply, options));
  const at = (volts: Float64Array | undefined, point: string) => volts?.[response.points.get(point) ?? -1] ?? Number.NaN;

  it("is exact for a small change of load, the rectifier on its tangent", () => {
    const changed = replaced(supply, "R2", resistor("R2", "B+", "0", 46e3));
    const whole = solveSteady(changed, options);
    const before = response.volts[response.points.get("B+") ?? -1] ?? 0;
    const [found, right] = [at(response.changed(changed), "B+") - before, (whole.points.get("B+")?.meanVolts ?? 0) - before];
    // A change of 2 %: its square is what the tangent leaves out.
    expect(found / right).toBeGreaterThan(0.97);
    expect(found / right).toBeLessThan(1.03);
  });

  it("knows the order of a large one, and says nothing of rectifiers, reservoirs and alternating points", () => {
    const heavy = replaced(supply, "R2", resistor("R2", "B+", "0", 4700));
    const whole = solveSteady(heavy, options).points.get("B+")?.meanVolts ?? 0;
    expect(at(response.changed(heavy), "B+") / whole).toBeGreaterThan(0.75);
    expect(at(response.changed(heavy), "B+") / whole).toBeLessThan(1.25);
    for (const id of ["D", "C1", "Rs"]) expect(response.changed(replaced(supply, id)), id).toBeUndefined();
  });
});
