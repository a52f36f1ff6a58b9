import type { Report } from "@underchassis/dataset";
import type { CircuitSheet } from "@underchassis/grading";
import { stableJson } from "./stableJson.ts";

/** A report or a circuit sheet as JSON in a stable order of keys, texts as they were written, for machines and for comparing two runs. */
export function renderJson(sheet: Report | CircuitSheet): string {
  return stableJson(sheet);
}
