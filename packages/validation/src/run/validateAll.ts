import { gradeJob, jobProblems } from "@underchassis/grading";
import type { FileSource } from "../model/fileSource.ts";
import type { Grader } from "../model/grader.ts";
import { allRules } from "../rules/allRules.ts";
import { templateRun } from "./templateRun.ts";
import { type ValidateOptions, type ValidateResult, validateFiles } from "./validateFiles.ts";

/** Grading as this repository has it. */
export const grader: Grader = {
  problemsOf: jobProblems,
  grade: (files, dataset) => gradeJob(files, dataset, { toolVersion: "0.0.0" }),
  simulate: templateRun,
};

/** Holds files against every rule: `validateFiles` with all rules and with grading. */
export function validateAll(source: FileSource, options: Omit<ValidateOptions, "rules" | "grader"> = {}): ValidateResult {
  return validateFiles(source, { ...options, rules: allRules, grader });
}
