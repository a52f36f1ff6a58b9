/** Every kind of supply as a job: graded figures against the independent simulator (scripts/make-job-oracle.ts), and two ways of writing it. */
import type { Element } from "@underchassis/calc";
import { describe, expect, it } from "vitest";
import { type Compared, compareSteady } from "../engine/compare.ts";
import { currentDigest } from "../engine/oracle/measure.ts";
import { checkPlausible } from "../engine/oracle/plausible.ts";
import { type OracleRecord, readRecord, recordNames } from "../engine/oracle/record.ts";
import { asParts, asTemplate } from "./circuits/case.ts";
import { JOB_CIRCUITS } from "./circuits/index.ts";
import { JOB_CASES, JOB_DATA, JOB_TOLERANCE, jobModel } from "./oracleCases.ts";

/** Below this a current is what two solvers leave over: no capacitor has a mean current. */
const NOTHING_AMPS = 1e-6;
const isNothing = ({ where, found, expected }: Compared): boolean =>
  where.endsWith("amps") && Math.max(Math.abs(found), Math.abs(expected)) < NOTHING_AMPS;

const named = JOB_CASES.map((jobCase) => [jobCase.oracle.name, jobCase] as const);

function stored(name: string): OracleRecord {
  const record = readRecord(name, JOB_DATA);
  if (record === undefined) throw new Error(`no data for ${name}: run npx tsx scripts/make-job-oracle.ts ${name}`);
  return record;
}

it("stored figures belong to a case each", () => {
  expect(recordNames(JOB_DATA).sort()).toEqual(named.map(([name]) => name).sort());
});

describe.each(named)("%s", (name, { oracle, solved }) => {
  it("was simulated as it compiles now, and agrees with a hand estimate", () => {
    const record = stored(name);
    expect(record.netlist).toBe(currentDigest(oracle));
    checkPlausible(oracle, record);
  });

  it("is solved as the simulator solves it: means within 0.5 %, ripple within 5 %", () => {
    const comparison = compareSteady(stored(name), solved.steady, JOB_TOLERANCE);
    expect(comparison.figures.length).toBeGreaterThan(30);
    expect(comparison.figures.filter((figure) => !(figure.share <= 1 || isNothing(figure)))).toEqual([]);
  });
});

describe.each(JOB_CIRCUITS.map((circuit) => [circuit.name, circuit] as const))("%s", (_name, circuit) => {
  const [template, parts] = [jobModel(asTemplate(circuit)), jobModel(asParts(circuit))];
  const byId = (elements: readonly Element[]) => [...elements].sort((a, b) => (a.id < b.id ? -1 : 1));

  it.each(["operating", "standby", "tubes-out"] as const)("written as free parts is the same network, %s", (condition) => {
    const situation = { life: "restored", condition, line: "actual" } as const;
    const [first, second] = [template.compile(situation), parts.compile(situation)];
    expect(first.network.elements.length).toBeGreaterThan(4);
    expect(byId(second.network.elements)).toEqual(byId(first.network.elements));
    expect(second.network.reference).toBe(first.network.reference);
  });

  it("written as free parts gives the same figures", () => {
    const situation = { life: "restored", condition: "operating", line: "actual" } as const;
    const [first, second] = [template.solve(situation), parts.solve(situation)];
    if (!first.ok || !second.ok) throw new Error("not solved");
    expect([...second.steady.points.keys()].sort()).toEqual([...first.steady.points.keys()].sort());
    for (const [point, { meanVolts, rmsVolts }] of first.steady.points) {
      // Two orders of the same equations: they part only by what the solver calls converged.
      const allowed = 1e-4 * rmsVolts + 1e-6;
      expect(Math.abs((second.steady.points.get(point)?.meanVolts ?? Number.NaN) - meanVolts), point).toBeLessThan(allowed);
    }
  });
});
