import { extname } from "node:path";
import type { Report } from "@underchassis/dataset";
import { loadDataset } from "@underchassis/dataset/load";
import { gradeJob } from "@underchassis/grading";
import { renderHtml, renderJson, renderMarkdown, renderText } from "@underchassis/report";
import { type Command, Option } from "commander";
import { checkOut } from "../files/checkOut.ts";
import { loadJobFiles } from "../files/loadJobFiles.ts";
import { writeWhole } from "../files/writeWhole.ts";
import { InputError } from "../inputError.ts";
import { EXIT, printable, type Terminal } from "../terminal.ts";
import { version } from "../version.ts";
import { refuse } from "./refuse.ts";

const FORMATS = ["text", "markdown", "json", "html"] as const;
type Format = (typeof FORMATS)[number];

const FORMAT_OF_ENDING: Readonly<Record<string, Format>> = {
  ".txt": "text",
  ".md": "markdown",
  ".json": "json",
  ".html": "html",
  ".htm": "html",
};

interface GradeOptions {
  format?: Format;
  out?: string;
  suspects?: true;
}

/** The format that a file's ending asks for; text without an ending. */
function formatOf(out: string): Format {
  const ending = extname(out).toLowerCase();
  const format = ending === "" ? "text" : FORMAT_OF_ENDING[ending];
  if (format !== undefined) return format;
  const known = Object.keys(FORMAT_OF_ENDING).join(", ");
  throw new InputError(out, `no report is written as ${ending}`, `use ${known}, or say which with --format; a browser prints .html as PDF`);
}

function render(report: Report, format: Format, { colour, columns }: { colour: boolean; columns: number | undefined }): string {
  if (format === "json") return renderJson(report);
  if (format === "html") return renderHtml(report);
  if (format === "markdown") return renderMarkdown(report);
  return renderText(report, columns === undefined ? { colour } : { colour, width: columns });
}

/** Grades the job at `path` and writes the report. @returns exit code */
function grade(path: string, options: GradeOptions, terminal: Terminal): number {
  const format = options.format ?? formatOf(options.out ?? "");
  const files = loadJobFiles(path);
  if (options.out !== undefined) checkOut(options.out, files);
  const graded = gradeJob(files, loadDataset(), { toolVersion: version, ...(options.suspects === true ? { suspects: {} } : {}) });
  if (!graded.ok) return refuse(graded.diagnostics, files, format, terminal);

  if (options.out === undefined) {
    terminal.out(render(graded.report, format, { colour: terminal.colour.out, columns: terminal.columns }));
  } else {
    writeWhole(options.out, render(graded.report, format, { colour: false, columns: undefined }));
    terminal.err(`wrote ${printable(options.out)}\n`);
  }
  return graded.report.counts.danger > 0 ? EXIT.danger : EXIT.done;
}

/** Adds the arguments of `underchassis grade`. */
export function define(command: Command, terminal: Terminal, finish: (exitCode: number) => void): void {
  command
    .argument("<job>", "folder that holds job.json, or the file itself")
    .addOption(new Option("-f, --format <format>", "how to write the report (default: by the ending of --out, else text)").choices(FORMATS))
    .option("-o, --out <file>", "write the report there instead of printing it")
    .option("-s, --suspects", "also search for the fault behind readings that are off")
    .action((path: string, options: GradeOptions) => finish(grade(path, options, terminal)));
}
