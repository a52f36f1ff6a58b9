import type { Dataset } from "@underchassis/dataset";
import type { Diagnostic, GradeResult, JobFiles } from "@underchassis/grading";
import type { TemplateRun } from "./subjects.ts";

/** What grading does for a run. Handed in, so that what needs no circuit loads none of it. */
export interface Grader {
  /** What keeps a job from being read; nothing is simulated. */
  problemsOf(files: JobFiles, dataset: Dataset): readonly Diagnostic[];
  grade(files: JobFiles, dataset: Dataset): GradeResult;
  /** A template alone with its typical surroundings. @param value - the record, which fits its schema */
  simulate(file: string, value: unknown, dataset: Dataset): TemplateRun;
}
