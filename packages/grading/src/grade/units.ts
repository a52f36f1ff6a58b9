import type { ReadingQuantity } from "../model/index.ts";

/** Base unit of what a reading shows. */
export const UNIT_OF: Record<ReadingQuantity, string> = {
  "dc-volts": "V",
  "ac-volts": "V",
  "ripple-volts": "V",
  ohms: "ohm",
  "dc-amps": "A",
  "ac-amps": "A",
};
