/** Answers a proposed measurement from the stored readings of a case, as a meter would show it. */
import type { CaseFile, StoredReadings } from "../cases/caseFile.ts";
import { shown } from "../cases/detectable.ts";
import { asMetered, METER_INPUT_OHMS, type StoredQuantity } from "../cases/meterError.ts";
import { Random } from "../random.ts";

export interface Asked {
  at: string;
  to: string;
  quantity: string;
  condition: string;
}

/** Points this stiff are not moved by a meter: their difference is what a meter between them shows, within a thousandth. */
const STIFF_OHMS = METER_INPUT_OHMS / 1000;

/**
 * @param seed words that the meter's error hangs on, besides the measurement itself
 * @returns volts or ohms (Infinity: open); undefined when the table does not hold the answer
 */
export function lookUp(file: CaseFile, readings: StoredReadings, asked: Asked, seed: string): number | undefined {
  const found = exact(file, readings, asked);
  if (found === undefined) return undefined;
  const random = new Random(file.chassis, seed, asked.quantity, asked.at, asked.to, asked.condition);
  return asMetered(found.quantity, found.value, random);
}

function exact(
  file: CaseFile,
  readings: StoredReadings,
  { at, to, quantity, condition }: Asked,
): { quantity: StoredQuantity; value: number } | undefined {
  if (quantity === "ohms") {
    if (condition !== "cold") return undefined;
    const index = file.pairs.findIndex(([a, b]) => (a === at && b === to) || (a === to && b === at));
    const ohms = readings.cold[index];
    return ohms === undefined ? undefined : { quantity, value: ohms ?? Number.POSITIVE_INFINITY };
  }
  const powered = condition === "operating" ? readings.operating : condition === "tubes-out" ? readings["tubes-out"] : undefined;
  if (powered === undefined || powered === null) return undefined;
  const indexOf = (point: string): number => (point === file.reference ? -1 : file.points.indexOf(point));
  const [from, other] = [indexOf(at), indexOf(to)];
  if ((from < 0 && at !== file.reference) || (other < 0 && to !== file.reference)) return undefined;
  const of = (list: readonly number[], index: number): number => (index < 0 ? 0 : (list[index] ?? Number.NaN));
  if (quantity === "ripple-volts") return other >= 0 || from < 0 ? undefined : { quantity, value: of(powered.ripple, from) };
  if (quantity !== "dc-volts") return undefined;
  const [sourceA, sourceB] = [of(powered.sourceOhms, from), of(powered.sourceOhms, other)];
  if (from >= 0 && other >= 0 && sourceA + sourceB > STIFF_OHMS) return undefined;
  const volts = of(powered.volts, from) - of(powered.volts, other);
  return { quantity, value: from >= 0 && other >= 0 ? volts : shown(volts, sourceA + sourceB) };
}
