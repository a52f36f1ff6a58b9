import { describe, expect, it } from "vitest";
import type { Element } from "./network.ts";
import { operatingPoint, solveSteady } from "./steady.ts";
import { battery, capacitor, inductor, line, load, network, resistor, silicon, vacuum } from "./test-parts.ts";

const OMEGA = 2 * Math.PI * 60;

describe("solveSteady on linear networks", () => {
  it("RC low-pass: amplitude and phase of the phasor solution", () => {
    const steady = solveSteady(network(line("S", "a", "0", 10), resistor("R", "a", "b", 1000), capacitor("C", "b", "0", 2e-6)));
    const expected = 10 / Math.hypot(1, OMEGA * 1000 * 2e-6);
    expect(steady.points.get("b")!.rmsVolts / expected).toBeCloseTo(1, 3);
    expect(steady.elements.get("R")!.watts).toBeCloseTo((100 - expected ** 2) / 1000, 4);
    expect(steady.currentResidual).toBeLessThan(1e-6);
  });

  it("series RLC at resonance: the current is V/R and the coil shows Q times the source", () => {
    const henries = 1 / (OMEGA ** 2 * 1e-6);
    const steady = solveSteady(
      network(line("S", "a", "0", 1), resistor("R", "a", "b", 400), inductor("L", "b", "c", henries), capacitor("C", "c", "0", 1e-6)),
      { stepsPerPeriod: 512 },
    );
    expect(steady.elements.get("R")!.rmsAmps * 400).toBeCloseTo(1, 2);
    expect(steady.elements.get("L")!.rmsVolts / ((OMEGA * henries) / 400)).toBeCloseTo(1, 2);
  });

  it("a transformer reflects a load by the square of its turns", () => {
    const steady = solveSteady(
      network(
        line("S", "a", "0", 117),
        {
          kind: "transformer",
          id: "T",
          windings: [
            { id: "p", nodes: ["a", "0"], turns: 117, ohms: 2 },
            { id: "s", nodes: ["b", "0"], turns: 6.3, ohms: 0.01 },
          ],
        },
        resistor("R", "b", "0", 2),
      ),
    );
    const ratio = 117 / 6.3;
    const amps = 117 / (2 + ratio ** 2 * 2.01);
    expect(steady.elements.get("T.p")!.rmsAmps / amps).toBeCloseTo(1, 4);
    expect(steady.points.get("b")!.rmsVolts / (amps * ratio * 2)).toBeCloseTo(1, 4);
  });

  it("a half-wave current does not put a steady voltage on a winding: only its wire carries it", () => {
    const steady = solveSteady(
      network(
        line("S", "a", "0", 117),
        {
          kind: "transformer",
          id: "T",
          windings: [
            { id: "p", nodes: ["a", "0"], turns: 1, ohms: 3 },
            { id: "s", nodes: ["b", "0"], turns: 1, ohms: 20 },
          ],
        },
        silicon("D", "b", "c"),
        resistor("R", "c", "0", 500),
      ),
    );
    const winding = steady.elements.get("T.s")!;
    expect(winding.meanAmps).toBeLessThan(-0.01);
    expect(winding.meanVolts / (winding.meanAmps * 20)).toBeCloseTo(1, 4);
    expect(Math.abs(steady.elements.get("T.p")!.meanAmps)).toBeLessThan(1e-5);
  });

  it("a current round two coils without resistance is not determined, and the rest is found", () => {
    const steady = solveSteady(
      network(line("S", "a", "0", 10), resistor("R", "a", "b", 100), inductor("L1", "b", "0", 1), inductor("L2", "b", "0", 3)),
    );
    const reactance = OMEGA * 0.75;
    expect(steady.points.get("b")!.rmsVolts / ((10 * reactance) / Math.hypot(100, reactance))).toBeCloseTo(1, 3);
    // What goes round the two is not determined; what comes in through the resistor has no steady part.
    expect(Math.abs(steady.elements.get("L1")!.meanAmps + steady.elements.get("L2")!.meanAmps)).toBeLessThan(1e-6);
  });

  it("harmonically related sources share one period; others are refused", () => {
    const steady = solveSteady(network(line("S", "a", "b", 3, 60), line("H", "b", "0", 4, 180), resistor("R", "a", "0", 1)));
    expect(steady.hertz).toBe(60);
    expect(steady.points.get("a")!.rmsVolts).toBeCloseTo(5, 6);
    // A high harmonic gets steps enough: 3 V of 60 Hz and 4 V of 50 times that behind an RC whose corner lies between them.
    const high = solveSteady(
      network(line("S", "a", "b", 3, 60), line("H", "b", "0", 4, 3000), resistor("R", "a", "c", 1000), capacitor("C", "c", "0", 0.1e-6)),
    );
    const share = (hertz: number): number => 1 / Math.hypot(1, 2 * Math.PI * hertz * 1e-4);
    expect(high.points.get("c")!.rmsVolts / Math.hypot(3 * share(60), 4 * share(3000))).toBeCloseTo(1, 2);
    expect(() => solveSteady(network(line("S", "a", "b", 3, 60), line("H", "b", "0", 4, 61.7), resistor("R", "a", "0", 1)))).toThrow(
      expect.objectContaining({ code: "bad-value" }),
    );
  });
});

describe("solveSteady on rectifiers", () => {
  it("lightly loaded half-wave supply: the crest less the junction, ripple I/(f C)", () => {
    // Capacitor-input limit: V = sqrt(2) Vrms - Vd, ripple = I/(f C) (common-practice), within the few per cent of that formula.
    const steady = solveSteady(
      network(line("S", "a", "0", 100), silicon("D", "a", "p"), capacitor("C", "p", "0", 100e-6), resistor("R", "p", "0", 100e3)),
    );
    const p = steady.points.get("p")!;
    expect(p.maxVolts).toBeGreaterThan(Math.SQRT2 * 100 - 1);
    expect(p.maxVolts).toBeLessThan(Math.SQRT2 * 100 - 0.4);
    expect((p.maxVolts - p.minVolts) / (p.meanVolts / 100e3 / (60 * 100e-6))).toBeCloseTo(1, 1);
  });

  it("choke-input bridge above its critical current: the mean of the rectified sine", () => {
    // 2 sqrt(2)/pi Vrms less drops (any text on rectifiers; common-practice). Drops here: two junctions and the wire.
    const steady = solveSteady(
      network(
        line("S", "a", "b", 300),
        silicon("D1", "a", "p"),
        silicon("D2", "b", "p"),
        silicon("D3", "0", "a"),
        silicon("D4", "0", "b"),
        inductor("L", "p", "q", 10, { dcrOhms: 100 }),
        capacitor("C", "q", "0", 40e-6),
        resistor("R", "q", "0", 3000),
      ),
    );
    const mean = ((2 * Math.SQRT2) / Math.PI) * 300;
    const junctions = mean - steady.points.get("p")!.meanVolts;
    expect(junctions).toBeGreaterThan(1.2);
    expect(junctions).toBeLessThan(2);
    expect(steady.points.get("q")!.meanVolts / ((mean - junctions) * (3000 / 3100))).toBeCloseTo(1, 4);
  });

  it("power in equals power out, and a warm start finds the same state", () => {
    const supply = network(
      line("S", "a", "0", 250),
      resistor("RS", "a", "b", 120),
      vacuum("V", "b", "p"),
      capacitor("C1", "p", "0", 20e-6, { esrOhms: 3, leakOhms: 1e6 }),
      inductor("L", "p", "q", 8, { dcrOhms: 300, swing: { residualHenries: 3, halfAmps: 0.05 } }),
      capacitor("C2", "q", "0", 20e-6),
      resistor("R", "q", "0", 6000),
    );
    const steady = solveSteady(supply);
    const watts = [...steady.elements.values()].map((figures) => figures.watts);
    const delivered = -watts.filter((value) => value < 0).reduce((a, b) => a + b, 0);
    expect(Math.abs(watts.reduce((a, b) => a + b, 0)) / delivered).toBeLessThan(2e-4);
    const again = solveSteady(supply, { warmStart: steady });
    for (const [point, figures] of steady.points) expect(again.points.get(point)!.meanVolts).toBeCloseTo(figures.meanVolts, 3);
    expect(again.iterations).toBeLessThan(steady.iterations);
  });

  it("settles a balancing network of half a minute exactly: two cans share by their leakage and resistors", () => {
    const steady = solveSteady(
      network(
        line("S", "a", "0", 300),
        silicon("D", "a", "p"),
        capacitor("C1", "p", "m", 100e-6),
        capacitor("C2", "m", "0", 100e-6, { leakOhms: 1e6 }),
        resistor("R1", "p", "m", 470e3),
        resistor("R2", "m", "0", 470e3),
      ),
    );
    const lower = 1 / (1 / 470e3 + 1e-6);
    const { points } = steady;
    expect(points.get("m")!.meanVolts / points.get("p")!.meanVolts / (lower / (lower + 470e3))).toBeCloseTo(1, 5);
  });
});

describe("gas regulators", () => {
  const regulated = (volts: number): Element[] => [
    battery("B", "a", "0", volts),
    resistor("RS", "a", "g", 5000),
    { kind: "gas-regulator", id: "VR", nodes: ["g", "0"], strikeVolts: 180, operatingVolts: 150, slopeOhms: 100, extinguishAmps: 0.005 },
    resistor("RL", "g", "0", 15e3),
  ];
  it("strikes when the dark voltage passes the striking voltage, and then holds", () => {
    // Dark: 15/20 of the supply. 250 V gives 187.5 V, enough. Lit by hand: (250 - v)/5000 = v/15000 + (v - 150)/100.
    const steady = operatingPoint(network(...regulated(250)));
    const expected = (250 / 5000 + 150 / 100) / (1 / 5000 + 1 / 15000 + 1 / 100);
    expect(steady.elements.get("VR")!.state?.lit).toBe(true);
    expect(steady.points.get("g")!.meanVolts).toBeCloseTo(expected, 3);
  });
  it("stays dark below it", () => {
    const steady = operatingPoint(network(...regulated(235)));
    expect(steady.elements.get("VR")!.state?.lit).toBe(false);
    expect(steady.points.get("g")!.meanVolts).toBeCloseTo(235 * 0.75, 3);
  });
});

describe("self-heating elements", () => {
  it("a lamp across the line takes the current of its law", () => {
    // (cold + (rated - cold) (I/rated)^1.2) I = V has one root; at rated volts it is the rated current.
    const lamp: Element = { kind: "filament", id: "F", nodes: ["a", "0"], coldOhms: 20, ratedOhms: 240, ratedAmps: 0.5 };
    expect(solveSteady(network(line("S", "a", "0", 120), lamp)).elements.get("F")!.rmsAmps).toBeCloseTo(0.5, 4);
    const amps = operatingPoint(network(battery("S", "a", "0", 60), lamp)).elements.get("F")!.meanAmps;
    expect((20 + 220 * (amps / 0.5) ** 1.2) * amps).toBeCloseTo(60, 2);
  });
  it("a thermistor settles where its heat balances its cooling", () => {
    const thermistor: Element = {
      kind: "thermistor",
      id: "TH",
      nodes: ["a", "b"],
      r25Ohms: 50,
      betaKelvin: 3000,
      deltaWattsPerKelvin: 0.02,
      tauSeconds: 60,
    };
    const figures = solveSteady(network(line("S", "a", "0", 117), thermistor, resistor("R", "b", "0", 300))).elements.get("TH")!;
    const { kelvin, ohms } = figures.state as { kelvin: number; ohms: number };
    expect(figures.watts).toBeCloseTo(0.02 * (kelvin - 298.15), 3);
    expect(ohms).toBeCloseTo(50 * Math.exp(3000 * (1 / kelvin - 1 / 298.15)), 3);
    expect(kelvin).toBeGreaterThan(340);
  });
});

describe("networks that cannot be solved", () => {
  it.each([
    [
      "floating-point",
      network(line("S", "a", "0", 10), capacitor("C1", "a", "x", 1e-6), capacitor("C2", "x", "0", 1e-6)),
      ["x"],
      ["C1", "C2"],
    ],
    ["source-loop", network(battery("B1", "a", "0", 10), battery("B2", "a", "0", 9), resistor("R", "a", "0", 1)), ["a", "0"], ["B1", "B2"]],
    ["no-convergence", network(battery("B", "a", "0", 100), resistor("R", "a", "b", 1000), load("I", "b", "0", 0.3)), ["b", "0"], ["I"]],
    ["bad-value", network(battery("B", "a", "0", 100), resistor("R", "a", "0", Number.NaN)), [], ["R"]],
    ["bad-value", network(battery("B", "a", "0", 100), resistor("B", "a", "0", 10)), [], ["B"]],
  ] as const)("%s", (code, circuit, points, elements) => {
    expect(() => solveSteady(circuit)).toThrow(expect.objectContaining({ code, points: [...points], elements: [...elements] }));
  });

  it("a rectifier that cannot feed a constant-current load says so", () => {
    const circuit = network(
      line("S", "s", "0", 117),
      resistor("RS", "s", "a", 2000),
      silicon("D", "a", "p"),
      capacitor("C", "p", "0", 40e-6),
      load("I", "p", "0", 0.3),
    );
    expect(() => solveSteady(circuit)).toThrow(
      expect.objectContaining({ code: "no-convergence", elements: expect.arrayContaining(["I"]) }),
    );
  });

  it("ties an island on request, and then leaves the rest as it was", () => {
    const circuit = network(
      battery("B", "a", "0", 10),
      resistor("R", "a", "0", 100),
      capacitor("C", "a", "x", 1e-6),
      resistor("R2", "x", "y", 10),
    );
    const steady = solveSteady(circuit, { islands: "tie" });
    expect(steady.points.get("y")!.meanVolts).toBeCloseTo(0, 9);
    expect(steady.elements.get("B")!.meanAmps).toBeCloseTo(-0.1, 9);
  });

  it("leaves an open switch and the points only it touches out of the network", () => {
    const circuit = network(battery("B", "a", "0", 10), resistor("R", "a", "0", 100), {
      kind: "switch",
      id: "SW",
      nodes: ["a", "x"],
      closed: false,
    });
    const steady = solveSteady(circuit);
    expect(steady.points.has("x")).toBe(false);
    expect(() => steady.read({ quantity: "dc-volts", from: "x", to: "0" })).toThrow(expect.objectContaining({ code: "unknown-point" }));
  });
});
