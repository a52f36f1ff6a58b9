import type { StageTemplate } from "./generated/index.ts";

/** Base unit of what a reading, or an expected figure, shows. */
export const READING_UNIT: Readonly<Record<StageTemplate["expected"][number]["quantity"], string>> = {
  "dc-volts": "V",
  "ac-volts": "V",
  "ripple-volts": "V",
  ohms: "ohm",
  "dc-amps": "A",
  "ac-amps": "A",
};
