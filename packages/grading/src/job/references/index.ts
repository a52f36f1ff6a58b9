import { checkConditions } from "./conditions.ts";
import type { ReferenceContext } from "./context.ts";
import { checkLeads } from "./leads.ts";
import { warnLonelyPoints } from "./lonelyPoints.ts";
import { checkMeters } from "./meters.ts";
import { checkPartNames } from "./partNames.ts";
import { checkPins } from "./pins.ts";
import { checkListedPoints } from "./points.ts";
import { checkReadings } from "./readings.ts";
import { checkRoles } from "./roles.ts";
import { checkStages } from "./stages.ts";

/** Every check of what a job's names refer to. They do not depend on one another's order. */
export const REFERENCE_CHECKS: readonly ((context: ReferenceContext) => void)[] = [
  checkStages,
  checkRoles,
  checkPartNames,
  checkLeads,
  checkPins,
  checkConditions,
  checkMeters,
  checkListedPoints,
  checkReadings,
  warnLonelyPoints,
];
