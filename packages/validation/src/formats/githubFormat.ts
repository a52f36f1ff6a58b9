import type { Diagnostic } from "../model/diagnostic.ts";
import type { ValidateResult } from "../run/validateFiles.ts";
import { countWords } from "./countWords.ts";
import { noteLines } from "./noteLines.ts";
import { placeOf } from "./textFormat.ts";
import { visible } from "./visible.ts";

/** GitHub shows ten errors and ten warnings a step, and drops the rest without a word. */
const SHOWN = 10;
/** Rows of the summary; it may hold a megabyte. */
const ROWS = 500;

/** Findings as workflow commands, errors first; what is not annotated is counted, and stands in the job summary. */
export function githubFormat(result: ValidateResult): string {
  const shown = (["error", "warning"] as const).flatMap((severity) =>
    result.diagnostics.filter((one) => one.severity === severity).slice(0, SHOWN),
  );
  const hidden = result.diagnostics.length - shown.length + result.omitted;
  const rest = hidden > 0 ? [`${hidden} more findings are not annotated: GitHub shows ${SHOWN} of a kind; the job summary has them`] : [];
  return `${[...shown.map(command), ...rest, countWords(result)].join("\n")}\n`;
}

function command({ severity, file, line, column, endLine, endColumn, code, message, ...notes }: Diagnostic): string {
  const properties = [
    ["file", file],
    ["line", line],
    ["endLine", endLine],
    ["col", column],
    ["endColumn", endLine === line && endColumn !== undefined && column !== undefined ? Math.max(endColumn, column + 1) : undefined],
    ["title", code],
  ].flatMap(([name, value]) => (value === undefined ? [] : [`${name}=${property(String(value))}`]));
  const text = [message, ...noteLines(notes)].join("\n");
  return `::${severity} ${properties.join(",")}::${data(text)}`;
}

const data = (text: string): string => text.replace(/%/g, "%25").replace(/\r/g, "%0D").replace(/\n/g, "%0A");
const property = (text: string): string => data(text).replace(/:/g, "%3A").replace(/,/g, "%2C");

/** Findings as a Markdown table for the job summary. */
export function githubSummary(result: ValidateResult): string {
  const rows = result.diagnostics
    .slice(0, ROWS)
    .map((one) => `| ${one.severity} | ${one.code} | ${cell(placeOf(one))} | ${[one.message, ...noteLines(one)].map(cell).join("<br>")} |`);
  const hidden = result.diagnostics.length - rows.length + result.omitted;
  return [
    "## Validation of the datasets",
    "",
    `${countWords(result)}.`,
    ...(rows.length === 0 ? [] : ["", "| | code | place | what |", "| --- | --- | --- | --- |", ...rows]),
    ...(hidden > 0 ? ["", `${hidden} more are not listed.`] : []),
    "",
  ].join("\n");
}

/** A cell in which nothing is markup. */
function cell(text: string): string {
  return visible(text)
    .replace(/&/g, "&amp;")
    .replace(/</g, "&lt;")
    .replace(/>/g, "&gt;")
    .replace(/[\\`*_{}[\]|#~!@]/g, (mark) => `&#${mark.codePointAt(0)};`);
}
