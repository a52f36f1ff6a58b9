import type { Diagnostic } from "@underchassis/grading";
import { stableJson } from "../json/stableJson.ts";
import { sortDiagnostics } from "./sortDiagnostics.ts";

/** Problems of the input for machines: `{ diagnostics, errors, warnings }`, in order of place, texts as they were written. */
export function renderDiagnosticsJson(diagnostics: readonly Diagnostic[]): string {
  const errors = diagnostics.filter((diagnostic) => diagnostic.severity === "error").length;
  return stableJson({ diagnostics: sortDiagnostics(diagnostics), errors, warnings: diagnostics.length - errors });
}
