export { type CircuitSheet, circuitSheet } from "./circuit/circuitSheet.ts";
export { buildModel, type GradeResult, gradeJob } from "./grade/gradeJob.ts";
export type { JobFiles } from "./job/loadedJob.ts";
export { type Diagnostic, LIVES, type Life } from "./model/index.ts";
