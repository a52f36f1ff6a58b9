import type { Diagnostic, JobFiles } from "@underchassis/grading";
import { renderDiagnostics, renderDiagnosticsJson } from "@underchassis/report";
import { EXIT, type Terminal } from "../terminal.ts";

/** Prints why a job cannot be read or simulated. @returns exit code */
export function refuse(diagnostics: readonly Diagnostic[], files: JobFiles, format: string, terminal: Terminal): number {
  const sources = [files.job, files.parts, files.readings].filter((file) => file !== undefined);
  const byName = Object.fromEntries(sources.map(({ name, text }) => [name, { path: name, text }]));
  if (format === "json") terminal.out(renderDiagnosticsJson(diagnostics));
  else terminal.err(renderDiagnostics(diagnostics, byName, { colour: terminal.colour.err }));
  return EXIT.failed;
}
