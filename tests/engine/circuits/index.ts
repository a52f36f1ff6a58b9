/** All circuits of the cross-check. */
import type { CircuitCase } from "../oracle/case.ts";
import { chassis } from "./chassis.ts";
import { dcCircuits } from "./dc.ts";
import { filters } from "./filters.ts";
import { rectifiers } from "./rectifiers.ts";
import { sensitivityCircuits } from "./sensitivity.ts";
import { stages } from "./stages.ts";
import { timeCourses } from "./time-courses.ts";
import { unplugged } from "./unplugged.ts";

export const circuits: readonly CircuitCase[] = [
  ...rectifiers,
  ...filters,
  ...dcCircuits,
  ...stages,
  ...timeCourses,
  ...sensitivityCircuits,
  ...chassis,
  ...unplugged,
];
