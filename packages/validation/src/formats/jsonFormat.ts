import type { ValidateResult } from "../run/validateFiles.ts";

/** Findings for machines, as schemas/validation.schema.json says. */
export function jsonFormat({ diagnostics, omitted, files, simulated }: ValidateResult): string {
  const errors = diagnostics.filter(({ severity }) => severity === "error").length;
  const whole = { formatVersion: 1, files, simulated, errors, warnings: diagnostics.length - errors, omitted, diagnostics };
  return `${JSON.stringify(whole, null, 2)}\n`;
}
