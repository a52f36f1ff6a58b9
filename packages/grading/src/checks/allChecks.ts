// Generated from packages/grading/src/checks/; run npm run generate. Changes made here are lost.

import type { Check } from "../model/check.ts";
import { amplifierOperatingPoint } from "./audio/amplifier-operating-point.ts";
import { couplingCapacitorLeakage } from "./audio/coupling-capacitor-leakage.ts";
import { outputStageOperation } from "./audio/output-stage-operation.ts";
import { tubeLimits } from "./audio/tube-limits.ts";
import { electrolyticCondition } from "./filters/electrolytic-condition.ts";
import { filterChoke } from "./filters/filter-choke.ts";
import { filterPolarity } from "./filters/filter-polarity.ts";
import { filterRippleCurrent } from "./filters/filter-ripple-current.ts";
import { filterValueChange } from "./filters/filter-value-change.ts";
import { filterVoltageRating } from "./filters/filter-voltage-rating.ts";
import { paperCapacitorCondition } from "./filters/paper-capacitor-condition.ts";
import { seriesFilterBalance } from "./filters/series-filter-balance.ts";
import { cordGrounding } from "./line/cord-grounding.ts";
import { fuseRating } from "./line/fuse-rating.ts";
import { inrushLimiter } from "./line/inrush-limiter.ts";
import { lineCapacitorClass } from "./line/line-capacitor-class.ts";
import { lineCapacitorLeakage } from "./line/line-capacitor-leakage.ts";
import { lineDischarge } from "./line/line-discharge.ts";
import { lineFuse } from "./line/line-fuse.ts";
import { lineVoltage } from "./line/line-voltage.ts";
import { shortedSource } from "./line/shorted-source.ts";
import { switchCurrent } from "./line/switch-current.ts";
import { transformerlessChassis } from "./line/transformerless-chassis.ts";
import { publishedAgainstComputed } from "./readings/published-against-computed.ts";
import { readingAgainstComputed } from "./readings/reading-against-computed.ts";
import { readingAgainstPublished } from "./readings/reading-against-published.ts";
import { readingMeterLoading } from "./readings/reading-meter-loading.ts";
import { readingsConsistency } from "./readings/readings-consistency.ts";
import { brokenParts } from "./record/broken-parts.ts";
import { datasetVersion } from "./record/dataset-version.ts";
import { kitWiring } from "./record/kit-wiring.ts";
import { unmeasuredParts } from "./record/unmeasured-parts.ts";
import { unreadPoints } from "./record/unread-points.ts";
import { rectifierAverageCurrent } from "./rectifiers/rectifier-average-current.ts";
import { rectifierInputCapacitor } from "./rectifiers/rectifier-input-capacitor.ts";
import { rectifierInverseVoltage } from "./rectifiers/rectifier-inverse-voltage.ts";
import { rectifierPeakCurrent } from "./rectifiers/rectifier-peak-current.ts";
import { rectifierSubstitution } from "./rectifiers/rectifier-substitution.ts";
import { rectifierSupplyResistance } from "./rectifiers/rectifier-supply-resistance.ts";
import { rectifierSwitchOnCurrent } from "./rectifiers/rectifier-switch-on-current.ts";
import { seleniumRectifier } from "./rectifiers/selenium-rectifier.ts";
import { seriesDiodes } from "./rectifiers/series-diodes.ts";
import { transformerLoad } from "./rectifiers/transformer-load.ts";
import { bleederRating } from "./resistors/bleeder-rating.ts";
import { dischargeTime } from "./resistors/discharge-time.ts";
import { resistorDissipation } from "./resistors/resistor-dissipation.ts";
import { resistorDrift } from "./resistors/resistor-drift.ts";
import { resistorInCircuit } from "./resistors/resistor-in-circuit.ts";
import { resistorVoltage } from "./resistors/resistor-voltage.ts";
import { standbyBypassResistor } from "./standby/standby-bypass-resistor.ts";
import { standbySwitchRating } from "./standby/standby-switch-rating.ts";
import { templateRequirements } from "./templates/template-requirements.ts";

/** Every check, by area and name. */
export const allChecks: readonly Check[] = [
  amplifierOperatingPoint,
  couplingCapacitorLeakage,
  outputStageOperation,
  tubeLimits,
  electrolyticCondition,
  filterChoke,
  filterPolarity,
  filterRippleCurrent,
  filterValueChange,
  filterVoltageRating,
  paperCapacitorCondition,
  seriesFilterBalance,
  cordGrounding,
  fuseRating,
  inrushLimiter,
  lineCapacitorClass,
  lineCapacitorLeakage,
  lineDischarge,
  lineFuse,
  lineVoltage,
  shortedSource,
  switchCurrent,
  transformerlessChassis,
  publishedAgainstComputed,
  readingAgainstComputed,
  readingAgainstPublished,
  readingMeterLoading,
  readingsConsistency,
  brokenParts,
  datasetVersion,
  kitWiring,
  unmeasuredParts,
  unreadPoints,
  rectifierAverageCurrent,
  rectifierInputCapacitor,
  rectifierInverseVoltage,
  rectifierPeakCurrent,
  rectifierSubstitution,
  rectifierSupplyResistance,
  rectifierSwitchOnCurrent,
  seleniumRectifier,
  seriesDiodes,
  transformerLoad,
  bleederRating,
  dischargeTime,
  resistorDissipation,
  resistorDrift,
  resistorInCircuit,
  resistorVoltage,
  standbyBypassResistor,
  standbySwitchRating,
  templateRequirements,
];
