import type { Dimension } from "@underchassis/calc";
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

export const DIMENSION_OF_UNIT: Record<string, Dimension> = {
  V: "voltage",
  A: "current",
  ohm: "resistance",
  W: "power",
  F: "capacitance",
  J: "energy",
  s: "time",
  Hz: "frequency",
};

/** How a quantity is named in a sentence. */
export const QUANTITY_WORDS: Record<ReadingQuantity, string> = {
  "dc-volts": "DC voltage",
  "ac-volts": "AC voltage",
  "ripple-volts": "ripple, peak to peak",
  ohms: "resistance",
  "dc-amps": "direct current",
  "ac-amps": "RMS current",
};
