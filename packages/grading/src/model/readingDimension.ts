import type { Dimension } from "@underchassis/calc";
import type { ReadingQuantity } from "./chassis.ts";

/** Dimension of what a reading shows. */
export const READING_DIMENSION: Readonly<Record<ReadingQuantity, Dimension>> = {
  "dc-volts": "voltage",
  "ac-volts": "voltage",
  "ripple-volts": "voltage",
  ohms: "resistance",
  "dc-amps": "current",
  "ac-amps": "current",
};
