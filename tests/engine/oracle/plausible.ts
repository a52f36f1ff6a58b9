/** Holds a simulated figure against a hand formula, so that a wrong netlist does not become the truth. */
import type { CircuitCase } from "./case.ts";
import type { OracleRecord } from "./record.ts";

/** Throws when the figure is further from the hand estimate than the case allows. */
export function checkPlausible(circuit: CircuitCase, record: OracleRecord): void {
  if (circuit.plausible === undefined) return;
  const { point, volts, within, formula } = circuit.plausible;
  const found = record.seconds?.[point] ?? record.points?.[point]?.mean;
  if (found === undefined) throw new Error(`nothing was measured at ${point}`);
  if (Math.abs(found - volts) > within * Math.abs(volts)) throw new Error(`${point}: ${found}, by hand ${volts} (${formula})`);
}
