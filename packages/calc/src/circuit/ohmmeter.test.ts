import { describe, expect, it } from "vitest";
import { ohmmeter, ohmmeterSlopes } from "./ohmmeter.ts";
import { battery, capacitor, inductor, line, network, resistor, silicon, vacuum } from "./test-parts.ts";

const bridge = network(
  line("S", "l", "n", 117),
  {
    kind: "transformer",
    id: "T",
    windings: [
      { id: "p", nodes: ["l", "n"], turns: 1, ohms: 5 },
      { id: "s", nodes: ["a", "b"], turns: 1, ohms: 0.5 },
    ],
  },
  silicon("D1", "a", "p"),
  silicon("D2", "b", "p"),
  silicon("D3", "0", "a"),
  silicon("D4", "0", "b"),
  capacitor("C", "p", "0", 1e-3, { leakOhms: 1e6 }),
  resistor("R1", "p", "q", 1000),
  resistor("R2", "q", "0", 2000),
);

describe("ohmmeter", () => {
  it("reads windings by their own wire and nothing between windings", () => {
    expect(ohmmeter(bridge, "l", "n").ohms).toBeCloseTo(5, 9);
    expect(ohmmeter(bridge, "a", "b").ohms).toBeCloseTo(0.5, 9);
    expect(ohmmeter(bridge, "l", "a")).toEqual({ ohms: Number.POSITIVE_INFINITY, junctionsOn: [] });
  });

  it("reads resistors with the leakage of the capacitor across them, capacitors open", () => {
    expect(ohmmeter(bridge, "p", "0").ohms).toBeCloseTo(1 / (1 / 3000 + 1e-6), 6);
    expect(ohmmeter(bridge, "q", "p").ohms).toBeCloseTo(1 / (1 / 1000 + 1 / (2000 + 1e6)), 6);
  });

  it("turns silicon on with 2 V and not with 0.3 V, by polarity", () => {
    const simple = network(silicon("D", "a", "0"), resistor("R", "a", "0", 10e3));
    expect(ohmmeter(simple, "a", "0").ohms).toBeCloseTo(10e3, 6);
    const forward = ohmmeter(simple, "a", "0", { testVolts: 2 });
    // By hand: 2 V behind 2 kohm; 1.8 Vt ln(0.627 mA / 1 nA) = 0.621 V, of the 0.690 mA 0.062 mA through the resistor: 900 ohm.
    expect(forward.junctionsOn).toEqual(["D"]);
    expect(forward.ohms / 900).toBeCloseTo(1, 2);
    expect(ohmmeter(simple, "a", "0", { testVolts: 2, polarity: -1 })).toEqual({ ohms: expect.closeTo(10e3, 5), junctionsOn: [] });
  });

  it("two junctions in series need twice the voltage, also through a winding", () => {
    const series = network(silicon("D1", "a", "m"), silicon("D2", "m", "0"));
    expect(ohmmeter(series, "a", "0", { testVolts: 0.8 }).ohms).toBe(Number.POSITIVE_INFINITY);
    expect(ohmmeter(series, "a", "0", { testVolts: 2 }).junctionsOn).toEqual(["D1", "D2"]);
    expect(new Set(ohmmeter(bridge, "0", "p", { testVolts: 3 }).junctionsOn)).toEqual(new Set(["D1", "D2", "D3", "D4"]));
  });

  it("takes batteries out and leaves tubes cold", () => {
    const set = network(
      battery("B", "a", "0", 90),
      vacuum("V", "a", "k"),
      resistor("R", "k", "0", 500),
      inductor("L", "a", "c", 5, { dcrOhms: 250 }),
    );
    expect(ohmmeter(set, "a", "0", { testVolts: 9 }).ohms).toBe(Number.POSITIVE_INFINITY);
    expect(ohmmeter(set, "a", "c").ohms).toBeCloseTo(250, 6);
    expect(ohmmeter(set, "k", "k").ohms).toBe(0);
    expect(() => ohmmeter(set, "k", "nowhere")).toThrow(expect.objectContaining({ code: "unknown-point" }));
  });

  it("tells how a reading hangs on each resistance", () => {
    // R1 + R2 || R3: dR/d ln R1 = R1; dR/d ln R2 = R2 (R3/(R2 + R3))^2, by differentiating the formula.
    const ladder = network(resistor("R1", "a", "m", 1000), resistor("R2", "m", "0", 2200), resistor("R3", "m", "0", 4700));
    const { ohms, slopes } = ohmmeterSlopes(ladder, "a", "0");
    expect(ohms).toBeCloseTo(1000 + (2200 * 4700) / 6900, 6);
    expect(slopes().get("R1")).toBeCloseTo(1000, 6);
    expect(slopes().get("R2")).toBeCloseTo(2200 * (4700 / 6900) ** 2, 6);
    expect(slopes().get("R3")).toBeCloseTo(4700 * (2200 / 6900) ** 2, 6);
  });
});
