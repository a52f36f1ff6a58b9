import { extname, join } from "node:path";
import type { Dataset, StageTemplate } from "@underchassis/dataset";
import { loadDataset } from "@underchassis/dataset/load";
import {
  type JobFiles,
  jobWorksheet,
  partsForm,
  readingsForm,
  startingJob,
  templatesWorksheet,
  type Worksheet,
  type WorksheetResult,
} from "@underchassis/grading";
import { renderWorksheetHtml, renderWorksheetMarkdown, renderWorksheetText, renderWorkTable } from "@underchassis/report";
import { type Command, Option } from "commander";
import { closest } from "fastest-levenshtein";
import { checkOut } from "../files/checkOut.ts";
import { loadJobFiles } from "../files/loadJobFiles.ts";
import { writeNew } from "../files/writeNew.ts";
import { writeWhole } from "../files/writeWhole.ts";
import { InputError } from "../inputError.ts";
import { EXIT, printable, type Terminal } from "../terminal.ts";
import { refuse } from "./refuse.ts";

const FORMATS = ["text", "markdown", "html", "json", "csv"] as const;
type Format = (typeof FORMATS)[number];
const FORMAT_OF_ENDING: Readonly<Record<string, Format>> = {
  ".txt": "text",
  ".md": "markdown",
  ".html": "html",
  ".htm": "html",
  ".json": "json",
};

interface WorksheetOptions {
  job?: string;
  format?: Format;
  out?: string;
}

function templatesNamed(ids: readonly string[], dataset: Dataset): StageTemplate[] {
  return ids.map((id) => {
    const template = dataset.stages.get(id);
    if (template !== undefined) return template;
    const known = [...dataset.stages.keys()].sort();
    throw new InputError(id, "no stage template goes by this id", `the nearest is ${closest(id, known)}; there are ${known.join(", ")}`);
  });
}

function formatOf({ format, out }: WorksheetOptions): Format {
  if (format !== undefined) return format;
  const ending = extname(out ?? "").toLowerCase();
  const known = Object.hasOwn(FORMAT_OF_ENDING, ending) ? FORMAT_OF_ENDING[ending] : undefined;
  if (ending !== "" && known === undefined)
    throw new InputError(
      out ?? "",
      `no sheet is written as ${ending}`,
      `use ${Object.keys(FORMAT_OF_ENDING).join(", ")}, or --format csv with a folder`,
    );
  return known ?? "text";
}

/** The forms as a job folder to be filled in: nothing that lies there is written over. */
function writeForms(worksheet: Worksheet, folder: string, files: JobFiles | undefined, dataset: Dataset): string[] {
  const job = files === undefined ? `${JSON.stringify(startingJob(worksheet, dataset), null, 2)}\n` : files.job.text;
  const form: JobFiles = files ?? { job: { name: "job.json", text: job } };
  const texts = {
    "job.json": job,
    "parts.csv": renderWorkTable(partsForm(worksheet, form)),
    "readings.csv": renderWorkTable(readingsForm(worksheet, form)),
  };
  return writeNew(Object.entries(texts).map(([name, text]) => ({ path: join(folder, name), text })));
}

function print(worksheet: Worksheet, format: Exclude<Format, "csv">, columns: number | undefined): string {
  if (format === "json") return `${JSON.stringify(worksheet, null, 2)}\n`;
  if (format === "html") return renderWorksheetHtml(worksheet);
  return format === "markdown" ? renderWorksheetMarkdown(worksheet) : renderWorksheetText(worksheet, columns);
}

/** Prints a blank bench sheet for some templates or for a job's stages. @returns exit code */
function worksheet(ids: readonly string[], options: WorksheetOptions, terminal: Terminal): number {
  const { job, out } = options;
  if ((job === undefined) === (ids.length === 0))
    throw new InputError(
      "worksheet",
      "it takes stage templates or --job, one of the two",
      "underchassis worksheet supply-half-wave, or --job FOLDER",
    );
  const format = formatOf(options);
  if (format === "csv" && out === undefined)
    throw new InputError("--out", "csv is two tables beside a job.json; they need a folder", "--format csv --out FOLDER");
  const dataset = loadDataset();
  const files = job === undefined ? undefined : loadJobFiles(job);
  if (files !== undefined && out !== undefined && format !== "csv") checkOut(out, files);
  const made: WorksheetResult =
    files === undefined ? templatesWorksheet(templatesNamed(ids, dataset), dataset) : jobWorksheet(files, dataset);
  if (!made.ok) return refuse(made.diagnostics, files ?? { job: { name: "template", text: "" } }, format, terminal);
  if (format === "csv") {
    for (const path of writeForms(made.worksheet, out ?? "", files, dataset)) terminal.err(`wrote ${printable(path)}\n`);
  } else if (out === undefined) {
    terminal.out(print(made.worksheet, format, terminal.columns));
  } else {
    writeWhole(out, print(made.worksheet, format, undefined));
    terminal.err(`wrote ${printable(out)}\n`);
  }
  return EXIT.done;
}

/** Adds the arguments of `underchassis worksheet`. */
export function define(command: Command, terminal: Terminal, finish: (exitCode: number) => void): void {
  command
    .argument("[template...]", "ids of stage templates: supply-half-wave output-single-ended")
    .option("-j, --job <job>", "the stages of this job instead, with its own points and values")
    .addOption(
      new Option(
        "-f, --format <format>",
        "how to write it (default: by the ending of --out, else text); csv: a job folder to be filled in",
      ).choices(FORMATS),
    )
    .option("-o, --out <file>", "write it there instead of printing it; for csv a folder")
    .action((ids: string[], options: WorksheetOptions) => finish(worksheet(ids, options, terminal)));
}
