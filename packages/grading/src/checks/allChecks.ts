// Generated from packages/grading/src/checks/; run npm run generate. Changes made here are lost.

import type { Check } from "../model/check.ts";
import { cordGrounding } from "./line/cord-grounding.ts";
import { fuseRating } from "./line/fuse-rating.ts";
import { inrushLimiter } from "./line/inrush-limiter.ts";
import { lineCapacitorClass } from "./line/line-capacitor-class.ts";
import { lineCapacitorLeakage } from "./line/line-capacitor-leakage.ts";
import { lineDischarge } from "./line/line-discharge.ts";
import { lineFuse } from "./line/line-fuse.ts";
import { lineVoltage } from "./line/line-voltage.ts";
import { switchCurrent } from "./line/switch-current.ts";
import { transformerlessChassis } from "./line/transformerless-chassis.ts";
import { rectifierAverageCurrent } from "./rectifiers/rectifier-average-current.ts";
import { rectifierInverseVoltage } from "./rectifiers/rectifier-inverse-voltage.ts";
import { rectifierPeakCurrent } from "./rectifiers/rectifier-peak-current.ts";
import { rectifierSwitchOnCurrent } from "./rectifiers/rectifier-switch-on-current.ts";
import { resistorDissipation } from "./resistors/resistor-dissipation.ts";

/** Every check, by area and name. */
export const allChecks: readonly Check[] = [
  cordGrounding,
  fuseRating,
  inrushLimiter,
  lineCapacitorClass,
  lineCapacitorLeakage,
  lineDischarge,
  lineFuse,
  lineVoltage,
  switchCurrent,
  transformerlessChassis,
  rectifierAverageCurrent,
  rectifierInverseVoltage,
  rectifierPeakCurrent,
  rectifierSwitchOnCurrent,
  resistorDissipation,
];
