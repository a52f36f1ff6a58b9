import type { Log, Result } from "sarif";
import type { Diagnostic } from "../model/diagnostic.ts";
import type { Rule } from "../model/rule.ts";
import type { ValidateResult } from "../run/validateFiles.ts";

/** Findings as SARIF 2.1.0 (OASIS). */
export function sarifFormat(result: ValidateResult, rules: readonly Rule[]): string {
  const used = rules.filter(({ code }) => result.diagnostics.some((diagnostic) => diagnostic.code === code));
  const log: Log = {
    $schema: "https://json.schemastore.org/sarif-2.1.0.json",
    version: "2.1.0",
    runs: [
      {
        tool: {
          driver: {
            name: "underchassis-validation",
            rules: used.map(({ code, name, title, why, severity }) => ({
              id: code,
              name,
              shortDescription: { text: title },
              fullDescription: { text: why },
              defaultConfiguration: { level: severity },
            })),
          },
        },
        // Columns count UTF-16 units everywhere in this project.
        columnKind: "utf16CodeUnits",
        results: result.diagnostics.map((diagnostic) => resultOf(diagnostic, used)),
      },
    ],
  };
  return `${JSON.stringify(log, null, 2)}\n`;
}

function resultOf(diagnostic: Diagnostic, used: readonly Rule[]): Result {
  const { code, severity, file, line, column, endLine, endColumn } = diagnostic;
  const index = used.findIndex((rule) => rule.code === code);
  return {
    ruleId: code,
    ...(index < 0 ? {} : { ruleIndex: index }),
    level: severity,
    message: { text: sentence(diagnostic) },
    locations: [
      {
        physicalLocation: {
          artifactLocation: { uri: file.split("/").map(encodeURIComponent).join("/") },
          ...(line === undefined || column === undefined || endLine === undefined || endColumn === undefined
            ? {}
            : { region: { startLine: line, startColumn: column, endLine, endColumn } }),
        },
      },
    ],
  };
}

function sentence({ message, received, expected, nearest, help }: Diagnostic): string {
  return [
    message,
    ...(received === undefined ? [] : [`received: ${received}`]),
    ...(expected === undefined ? [] : [`expected: ${expected}`]),
    ...(nearest === undefined ? [] : [`nearest: ${nearest}`]),
    ...(help === undefined ? [] : [help]),
  ].join("\n");
}
