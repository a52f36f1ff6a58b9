export { checkDocuments } from "./checks/checkDocuments.ts";
export { outcomeOf, type Requirement, readRequirement } from "./checks/shared/requirements.ts";
export { stageValues } from "./checks/shared/stageValues.ts";
export { poweredConditions, type Stress, stresses } from "./checks/shared/stress.ts";
export { type TubeWork, workOf } from "./checks/shared/tubes.ts";
export { type CircuitSheet, circuitSheet } from "./circuit/circuitSheet.ts";
export { surroundName, templateJob } from "./circuit/templateJob.ts";
export { buildModel, type GradeResult, gradeJob } from "./grade/gradeJob.ts";
export { jobProblems } from "./grade/jobProblems.ts";
export type { JobFiles } from "./job/loadedJob.ts";
export {
  type ChassisModel,
  type Condition,
  type Diagnostic,
  LIVES,
  type Life,
  type Part,
  type PartState,
  type Stage,
} from "./model/index.ts";
export { NEEDED_PINS, PIN_SYNONYMS, PINS } from "./model/pins.ts";
export { ODDS_NAMES } from "./suspects/priors.ts";
export { type SearchOptions, searchSuspects } from "./suspects/searchSuspects.ts";
export type { Suspect, SuspectNext, SuspectReading, SuspectReport } from "./suspects/suspectReport.ts";
export { jobWorksheet, templatesWorksheet, type WorksheetResult } from "./worksheet/makeWorksheet.ts";
export type { WorkMeasure, WorkPart, WorkPoint, WorkStage, Worksheet } from "./worksheet/worksheet.ts";
export { partsForm, readingsForm, startingJob, type WorkTable } from "./worksheet/worksheetTables.ts";
