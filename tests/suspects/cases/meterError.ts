/** What a bench meter makes of a value: common-practice figures for a hand-held digital meter. */
import type { Random } from "../random.ts";

export type StoredQuantity = "dc-volts" | "ripple-volts" | "ohms";

export const METER_INPUT_OHMS = 10e6;
/** Above this a meter reads open. */
export const OPEN_OHMS = 20e6;
/** Half-width of the meter's error as a share of the reading. */
export const SHARE: Readonly<Record<StoredQuantity, number>> = { "dc-volts": 0.01, "ripple-volts": 0.03, ohms: 0.01 };
const DIGITS = 4000;

/** One step of a 4000-count display on the range that the value needs, in volts or ohms; ranges of 0.4 V and 400 ohm are the lowest. */
export function resolution(quantity: StoredQuantity, value: number): number {
  const lowest = quantity === "ohms" ? 400 : 0.4;
  const size = Math.min(Math.abs(value), quantity === "ohms" ? OPEN_OHMS : 4000);
  const range = Math.max(lowest, 4 * 10 ** Math.ceil(Math.log10(Math.max(size, 1e-9) / 4)));
  return range / DIGITS;
}

/** Standard deviation of the error: half of what the meter states, and its display. */
export const meterSigma = (quantity: StoredQuantity, value: number): number =>
  Math.hypot((SHARE[quantity] * Math.min(Math.abs(value), OPEN_OHMS)) / 2, resolution(quantity, value) / Math.sqrt(12));

/** What the display shows; infinite ohms: open. */
export function asMetered(quantity: StoredQuantity, value: number, random: Random): number {
  const error = (SHARE[quantity] / 2) * Math.max(-3, Math.min(3, random.normal()));
  const read = value * (1 + error);
  if (quantity === "ohms" && !(read < OPEN_OHMS)) return Number.POSITIVE_INFINITY;
  const step = resolution(quantity, read);
  return Math.round(read / step) * step;
}
