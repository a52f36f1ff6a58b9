/** Switch-on, discharge and small-signal gains of the engine against the stored figures of the simulator. */
import { discharge, smallSignal, transient } from "@underchassis/calc";
import { describe, expect, it } from "vitest";
import { circuits } from "./circuits/index.ts";
import { toleranceOf } from "./compare.ts";
import { compareGains, compareTransient } from "./compare-time.ts";
import type { Analysis, CircuitCase } from "./oracle/case.ts";
import { type OracleRecord, readRecord } from "./oracle/record.ts";

function stored(circuit: CircuitCase): OracleRecord {
  const record = readRecord(circuit.name);
  if (record === undefined) throw new Error(`no data for ${circuit.name}`);
  return record;
}

/** The circuits of one analysis, each with its analysis under the right type. */
function casesOf<Kind extends Analysis["kind"]>(
  kind: Kind,
): { name: string; circuit: CircuitCase; analysis: Extract<Analysis, { kind: Kind }> }[] {
  const isKind = (analysis: Analysis): analysis is Extract<Analysis, { kind: Kind }> => analysis.kind === kind;
  return circuits.flatMap((circuit) => (isKind(circuit.analysis) ? [{ name: circuit.name, circuit, analysis: circuit.analysis }] : []));
}

describe("switch-on from discharged", () => {
  it.each(casesOf("transient"))("$name", ({ circuit, analysis }) => {
    const found = transient(circuit.network, {
      durationSeconds: analysis.durationSeconds,
      initial: new Map(Object.entries(analysis.initialVolts ?? {})),
    });
    const comparison = compareTransient(analysis, stored(circuit), found, toleranceOf(circuit));
    expect(comparison.figures.length).toBeGreaterThan(20);
    expect(comparison.strays()).toEqual([]);
  });
});

describe("discharge", () => {
  it.each(casesOf("discharge"))("$name", ({ circuit, analysis }) => {
    const { toVolts, points, initialVolts } = analysis;
    const found = discharge(circuit.network, new Map(Object.entries(initialVolts)), { toVolts, points });
    for (const point of points) {
      const expected = stored(circuit).seconds?.[point] ?? Number.NaN;
      expect(Math.abs((found.seconds.get(point) ?? Number.NaN) / expected - 1), point).toBeLessThan(0.005);
    }
    // Joules stored: the sum of C V^2 / 2 over the capacitors.
    const joules = circuit.network.elements.map((e) => (e.kind === "capacitor" ? (e.farads * (initialVolts[e.id] ?? 0) ** 2) / 2 : 0));
    expect(found.joules).toBeCloseTo(
      joules.reduce((a, b) => a + b, 0),
      6,
    );
  });
});

describe("small-signal gains", () => {
  it.each(casesOf("small-signal"))("$name", ({ circuit, analysis }) => {
    const { input, outputs, hertz } = analysis;
    const comparison = compareGains(analysis, stored(circuit), smallSignal(circuit.network, { input, outputs, hertz }));
    expect(comparison.figures.length).toBe(outputs.length * hertz.length);
    expect(comparison.strays()).toEqual([]);
  });
});
