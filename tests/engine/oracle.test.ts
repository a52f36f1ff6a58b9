/** The engine against a general-purpose circuit simulator, whose figures are stored in `data` (scripts/make-engine-oracle.ts). */
import { ohmmeter, sensitivities, solveSteady } from "@underchassis/calc";
import { describe, expect, it } from "vitest";
import { circuits } from "./circuits/index.ts";
import { compareSensitivities, compareSteady, toleranceOf } from "./compare.ts";
import { type CircuitCase, DEFAULT_TOLERANCE } from "./oracle/case.ts";
import { currentDigest, measure } from "./oracle/measure.ts";
import { checkPlausible } from "./oracle/plausible.ts";
import { type OracleRecord, readRecord, recordNames } from "./oracle/record.ts";

function stored(circuit: CircuitCase): OracleRecord {
  const record = readRecord(circuit.name);
  if (record === undefined) throw new Error(`no data for ${circuit.name}: run npx tsx scripts/make-engine-oracle.ts ${circuit.name}`);
  return record;
}

const kinds = (...wanted: CircuitCase["analysis"]["kind"][]): CircuitCase[] =>
  circuits.filter(({ analysis }) => wanted.includes(analysis.kind));

describe("stored simulator figures", () => {
  it("cover at least 48 circuits with different names", () => {
    expect(new Set(circuits.map(({ name }) => name)).size).toBe(circuits.length);
    expect(circuits.length).toBeGreaterThanOrEqual(48);
  });

  it("belong to a circuit each", () => {
    expect(recordNames().filter((name) => !circuits.some((circuit) => circuit.name === name))).toEqual([]);
  });

  it.each(circuits)("$name: were made from the circuit as it stands, and agree with a hand estimate", (circuit) => {
    const record = stored(circuit);
    expect(record.netlist).toBe(currentDigest(circuit));
    checkPlausible(circuit, record);
    if (record.settling !== undefined) expect(record.settling.windows).toBeLessThan(1e-4);
  });

  it("give a reason wherever the tolerance is wider than the usual one", () => {
    for (const circuit of circuits) {
      const { mean, ripple, peak, reason } = toleranceOf(circuit);
      const wider = mean > DEFAULT_TOLERANCE.mean || ripple > DEFAULT_TOLERANCE.ripple || peak > DEFAULT_TOLERANCE.peak;
      if (wider) expect(reason, circuit.name).toBeTruthy();
    }
  });
});

describe("steady states and operating points", () => {
  it.each(kinds("steady", "dc"))("$name", (circuit) => {
    const solution = solveSteady(circuit.network);
    const comparison = compareSteady(stored(circuit), solution, toleranceOf(circuit));
    expect(comparison.figures.length).toBeGreaterThan(10);
    expect(comparison.strays()).toEqual([]);
  });

  it("would notice a load or a filter part that is wrong", () => {
    const circuit = circuits.find(({ name }) => name === "clc-5y3");
    if (circuit === undefined) throw new Error("the circuit is gone");
    for (const [id, factor] of [
      ["Rload", 1.03],
      ["L1", 1.08],
      ["C1", 1.08],
      ["V1a", 1.3],
    ] as const) {
      const elements = circuit.network.elements.map((element) => {
        if (element.id !== id) return element;
        if (element.kind === "resistor") return { ...element, ohms: element.ohms * factor };
        if (element.kind === "inductor") return { ...element, henries: element.henries * factor };
        if (element.kind === "capacitor") return { ...element, farads: element.farads * factor };
        if (element.kind === "vacuum-diode") return { ...element, perveance: element.perveance * factor };
        return element;
      });
      const comparison = compareSteady(stored(circuit), solveSteady({ ...circuit.network, elements }), toleranceOf(circuit));
      expect(comparison.strays().length, id).toBeGreaterThan(0);
    }
  });

  it.each(kinds("steady").filter(({ tolerance }) => tolerance?.holdsAtSteps !== undefined))(
    "$name: keeps the usual tolerance on a finer grid",
    (circuit) => {
      const stepsPerPeriod = circuit.tolerance?.holdsAtSteps ?? Number.NaN;
      const solution = solveSteady(circuit.network, { stepsPerPeriod });
      expect(compareSteady(stored(circuit), solution, DEFAULT_TOLERANCE).strays()).toEqual([]);
    },
  );

  it.each(circuits.filter(({ lit }) => lit !== undefined))("$name: finds which regulator tubes are lit", (circuit) => {
    const solution = solveSteady(circuit.network);
    const found = Object.keys(circuit.lit ?? {}).map((id) => [id, solution.elements.get(id)?.state?.lit]);
    expect(Object.fromEntries(found)).toEqual(circuit.lit);
  });
});

/** On the usual grid a ripple's sensitivity is the grid's own, some 12 % off at a sharp foot; a fine grid has to be right. */
const RIPPLE_SHARE = 0.15;
const FINE_STEPS = 1536;

describe("sensitivities", () => {
  it.each(kinds("sensitivity"))("$name", (circuit) => {
    const { network, analysis } = circuit;
    if (analysis.kind !== "sensitivity") throw new Error("not a sensitivity");
    const { probes, parameters } = analysis;
    const usual = compareSensitivities(analysis, stored(circuit), sensitivities(network, probes, parameters), RIPPLE_SHARE);
    expect(usual.figures.length).toBe(probes.length * parameters.length);
    expect(usual.strays()).toEqual([]);
    if (analysis.of.kind === "dc") return;
    const fine = solveSteady(network, { stepsPerPeriod: FINE_STEPS });
    expect(compareSensitivities(analysis, stored(circuit), sensitivities(network, probes, parameters, fine)).strays()).toEqual([]);
  });
});

describe("ohmmeter", () => {
  it.each(kinds("ohmmeter"))("$name", (circuit) => {
    const { analysis } = circuit;
    if (analysis.kind !== "ohmmeter") throw new Error("not an ohmmeter");
    const { pairs, ...meter } = analysis;
    pairs.forEach(([from, to], row) => {
      const expected = stored(circuit).ohms?.[row] ?? Number.POSITIVE_INFINITY;
      const { ohms } = ohmmeter(circuit.network, from, to, meter);
      if (Number.isFinite(expected))
        expect(Math.abs(ohms / expected - 1), `${from} to ${to}: ${ohms}, expected ${expected}`).toBeLessThan(0.003);
      else expect(ohms, `${from} to ${to}`).toBe(Number.POSITIVE_INFINITY);
    });
  });
});

describe("the simulator itself", () => {
  const sample = ["divider-with-meter", "long-tail-pair", "half-wave-capacitor-silicon-heavy"];

  it.each(circuits.filter(({ name }) => sample.includes(name)))(
    "$name: gives again what is stored",
    { timeout: 120_000 },
    async (circuit) => {
      const [then, now] = [stored(circuit), await measure(circuit)];
      expect(now.simulator).toBe(then.simulator);
      for (const [point, figures] of Object.entries(then.points ?? {})) {
        const again = now.points?.[point];
        const allowed = 1e-5 * Math.max(Math.abs(figures.max), Math.abs(figures.min)) + 1e-9;
        expect(Math.abs((again?.mean ?? Number.NaN) - figures.mean), `${point} mean`).toBeLessThanOrEqual(allowed);
        expect(Math.abs((again?.max ?? Number.NaN) - figures.max), `${point} max`).toBeLessThanOrEqual(allowed);
        expect(Math.abs((again?.min ?? Number.NaN) - figures.min), `${point} min`).toBeLessThanOrEqual(allowed);
      }
    },
  );
});
