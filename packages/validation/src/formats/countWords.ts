import type { ValidateResult } from "../run/validateFiles.ts";

/** "2 errors and 1 warning in 61 files, 20 templates simulated"; electrical findings are counted apart. */
export function countWords({ diagnostics, omitted, files, simulated }: ValidateResult): string {
  const errors = diagnostics.filter(({ severity }) => severity === "error").length;
  const warnings = diagnostics.length - errors;
  const electrical = diagnostics.filter(({ code }) => code.startsWith("UC-7")).length;
  const found =
    diagnostics.length === 0
      ? "nothing found"
      : `${many(errors, "error")} and ${many(warnings, "warning")}${omitted > 0 ? ` and ${omitted} not kept` : ""}`;
  const circuits =
    simulated > 0 ? `; ${many(simulated, "circuit")} simulated, ${electrical === 0 ? "none" : electrical} of the findings electrical` : "";
  return `${found} in ${many(files, "file")}${circuits}`;
}

function many(count: number, word: string): string {
  return `${count} ${word}${count === 1 ? "" : "s"}`;
}
