import { codeFrameColumns } from "@babel/code-frame";
import { createColors } from "picocolors";
import type { Diagnostic } from "../model/diagnostic.ts";
import type { ValidateResult } from "../run/validateFiles.ts";
import { countWords } from "./countWords.ts";
import { noteLines } from "./noteLines.ts";
import { visible } from "./visible.ts";

/** Lines longer than this are cut before they are shown: a minified file has one line. */
const WIDEST = 200;

export interface TextOptions {
  /** Text of a file, for the frame; undefined where it cannot be had. */
  textOf(file: string): string | undefined;
  /** Most findings that are shown. */
  most: number;
  colour: boolean;
  /** Whether circuits were asked for. */
  electrical: boolean;
}

/** Findings for a terminal, the one to mend first on top: place, message, the line with the place underlined, what was expected. */
export function textFormat(result: ValidateResult, { textOf, most, colour, electrical }: TextOptions): string {
  const shown = result.diagnostics.slice(0, most);
  const { red, yellow, bold } = createColors(colour);
  const blocks = shown.map((diagnostic) => {
    const { severity, code, message } = diagnostic;
    const head = `${(severity === "error" ? red : yellow)(severity)} ${code} ${bold(visible(placeOf(diagnostic)))}  ${visible(message)}`;
    return [head, ...frameOf(diagnostic, textOf(diagnostic.file), colour), ...noteLines(diagnostic).map((note) => `  ${note}`), ""].join(
      "\n",
    );
  });
  const hidden = result.diagnostics.length - shown.length + result.omitted;
  const rest = hidden > 0 ? [`${hidden} more not shown; --max-problems ${most + hidden} shows them`] : [];
  const simulated = electrical ? "" : "; circuits not simulated, which --electrical does";
  return `${[...blocks, ...rest, countWords(result) + simulated].join("\n")}\n`;
}

/** file:line:column */
export function placeOf({ file, line, column }: Diagnostic): string {
  return line === undefined ? file : `${file}:${line}:${column}`;
}

function frameOf({ line, column, endLine, endColumn }: Diagnostic, text: string | undefined, colour: boolean): string[] {
  if (text === undefined || line === undefined || column === undefined) return [];
  const shownLines = text.replace(/^\ufeff/, "").split(/\r\n|\n|\r/);
  const written = shownLines[line - 1] ?? "";
  // A window of a long line, so that the place is in it.
  const from = written.length > WIDEST ? Math.max(0, column - WIDEST / 2) : 0;
  const lines = shownLines.map((one, index) => (Math.abs(index - line + 1) > 1 ? "" : visible(one.slice(from, from + WIDEST))));
  const end = endLine === line && endColumn !== undefined && endColumn > column ? endColumn : column + 1;
  const frame = codeFrameColumns(
    lines.join("\n"),
    { start: { line, column: column - from }, end: { line, column: Math.min(end - from, WIDEST) } },
    { linesAbove: 1, linesBelow: 1, highlightCode: false, forceColor: colour },
  );
  return frame.split("\n").map((one) => `  ${one}`.trimEnd());
}
