import type { Reading, ReadingQuantity } from "../model/index.ts";

/** Something that a meter can show: quantity, where, in which condition. */
export interface Observable {
  quantity: ReadingQuantity;
  at: string;
  to: string;
  condition: string;
  lineVolts?: number;
  meterOhms: number;
  /** Relative error of the meter, one standard deviation taken as half of what it states. */
  accuracy: number;
}

export function observableOf(reading: Reading): Observable {
  const { quantity, at, to, condition, lineVolts, loadOhms, meter } = reading;
  return { quantity, at, to, condition, ...(lineVolts === undefined ? {} : { lineVolts }), meterOhms: loadOhms, accuracy: meter.accuracy };
}

export const observableKey = ({ quantity, at, to, condition }: Observable): string => [quantity, at, to, condition].join("|");

/** The line voltage and the condition that an observable is read in, as one word. */
export const situationKey = ({ condition, lineVolts }: Observable): string => `${condition}|${lineVolts ?? ""}`;

/** An ohmmeter's top; above it, everything reads open. common-practice. */
const OPEN_OHMS = 2e7;
/** Leads and contacts. common-practice. */
const LEAD_OHMS = 0.2;

/**
 * The scale on which a quantity's errors are even: volts and amperes as they are, ohms as a logarithm that ends where a meter reads open.
 */
export function scaled(quantity: ReadingQuantity, value: number): number {
  return quantity === "ohms" ? Math.log(Math.min(Math.max(value, 0), OPEN_OHMS) + LEAD_OHMS) : value;
}

/** Slope of the scale: change of the scaled value per unit of the value. */
export function scaleSlope(quantity: ReadingQuantity, value: number): number {
  if (quantity !== "ohms") return 1;
  return value >= OPEN_OHMS ? 0 : 1 / (Math.max(value, 0) + LEAD_OHMS);
}

/** Back from the scale to ohms; a meter at its top reads open. */
export function unscaled(quantity: ReadingQuantity, value: number): number {
  if (quantity !== "ohms") return value;
  const ohms = Math.exp(value) - LEAD_OHMS;
  return ohms >= 0.98 * OPEN_OHMS ? Number.POSITIVE_INFINITY : ohms;
}
