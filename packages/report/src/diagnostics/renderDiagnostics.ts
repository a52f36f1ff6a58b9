import type { Diagnostic } from "@underchassis/grading";
import { createColors } from "picocolors";
import { visible } from "../clean/visible.ts";
import { count } from "../view/headFacts.ts";
import { codeFrame } from "./codeFrame.ts";
import { sortDiagnostics } from "./sortDiagnostics.ts";

/** Input files by the name that diagnostics use, with their text. */
export type SourceFiles = Readonly<Record<string, { path: string; text: string }>>;

/** What somebody wrote is cut early: it is in the file. Our own words carry the way out (the choices, what to do) and are not. */
const longestValue = 120;
const longestSentence = 1200;

/** The text with nothing hidden, cut when it is very long; `quote` is set around what is shown of it. */
function shown(text: string, quote = "", longest = longestValue): string {
  const rest = text.length > longest ? `... (${text.length} characters)` : "";
  return `${quote}${visible(text.slice(0, longest))}${quote}${rest}`;
}

/** Lines of a file by name or by path; undefined when the file is not among those read. */
function linesByFile(files: SourceFiles): (name: string) => readonly string[] | undefined {
  const texts = new Map<string, string>();
  for (const { path, text } of Object.values(files)) texts.set(path, text);
  for (const [name, { text }] of Object.entries(files)) texts.set(name, text);
  const split = new Map<string, readonly string[]>();
  return (name) => {
    const text = texts.get(name);
    if (text === undefined) return undefined;
    const lines = split.get(name) ?? text.split(/\r\n|\n|\r/);
    split.set(name, lines);
    return lines;
  };
}

/** "2 errors, 1 warning in 2 files". */
function countLine(diagnostics: readonly Diagnostic[]): string {
  const errors = diagnostics.filter((diagnostic) => diagnostic.severity === "error").length;
  const files = new Set(diagnostics.map((diagnostic) => diagnostic.file)).size;
  return `${count(errors, "error")}, ${count(diagnostics.length - errors, "warning")} in ${count(files, "file")}`;
}

/**
 * Problems of the input for a terminal: grouped by file, in order of place, each with the source line, the place
 * underlined, what stood there, what was expected and the nearest thing that would work. Ends with a count line.
 */
export function renderDiagnostics(diagnostics: readonly Diagnostic[], files: SourceFiles, options: { colour: boolean }): string {
  if (diagnostics.length === 0) return "no problems found\n";
  const pen = createColors(options.colour);
  const linesOf = linesByFile(files);
  const output: string[] = [];
  let file: string | undefined;
  for (const diagnostic of sortDiagnostics(diagnostics)) {
    const { severity, code, line, column, length, received, expected, nearest, help } = diagnostic;
    if (diagnostic.file !== file) output.push(pen.bold(shown(diagnostic.file)));
    file = diagnostic.file;
    const place = [file, line, column].filter((part) => part !== undefined).join(":");
    const paint = severity === "error" ? pen.red : pen.yellow;
    output.push(`  ${paint(severity)} ${shown(place)} ${shown(diagnostic.message, "", longestSentence)} ${pen.dim(`[${shown(code)}]`)}`);
    const text = line === undefined ? undefined : linesOf(file)?.[line - 1];
    if (text !== undefined) {
      const frame = codeFrame(text, column, length);
      const gutter = " ".repeat(String(line).length);
      output.push(`    ${pen.dim(`${line} |`)} ${frame.source}`.trimEnd());
      if (frame.underline) output.push(`    ${pen.dim(`${gutter} |`)} ${paint(frame.underline)}`);
    }
    const note = (label: string, value: string | undefined, quote = "", longest = longestSentence): void => {
      if (value !== undefined) output.push(`    ${label}: ${shown(value, quote, longest)}`);
    };
    note("received", received, '"', longestValue);
    note("expected", expected);
    note("nearest", nearest, "", longestValue);
    note("help", help);
    output.push("");
  }
  return `${[...output, countLine(diagnostics)].join("\n")}\n`;
}
