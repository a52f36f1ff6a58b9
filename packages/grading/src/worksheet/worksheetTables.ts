import { formatQuantity } from "@underchassis/calc";
import type { Dataset, Job } from "@underchassis/dataset";
import { parse } from "csv-parse/sync";
import type { JobFiles } from "../job/loadedJob.ts";
import { READING_DIMENSION } from "../model/index.ts";
import { aloneJob } from "./aloneJob.ts";
import type { WorkPart, WorkPoint, Worksheet } from "./worksheet.ts";

/** A table that is filled in and then lies beside job.json. */
export interface WorkTable {
  head: readonly string[];
  rows: readonly Readonly<Record<string, string>>[];
}

const PARTS_HEAD = [
  "stage",
  "role",
  "name",
  "kind",
  "from",
  "to",
  "marked",
  "type",
  "measured",
  "measured_in",
  "leakage",
  "leakage_volts",
  "esr",
  "dcr",
  "meter",
  "fitted",
  "why",
  "note",
];
const READINGS_HEAD = ["at", "to", "quantity", "condition", "life", "value", "meter", "note"];
/** Rows of a table as it lies beside the job, by the reader's names of its columns. */
function rowsOf(text: string | undefined): Record<string, string>[] {
  if (text === undefined) return [];
  const named = (header: string[]) =>
    header.map((name) =>
      name
        .trim()
        .toLowerCase()
        .replace(/[\s-]+/g, "_"),
    );
  return parse(text, { columns: named, skip_empty_lines: true, trim: true, relax_column_count: true });
}

const headWith = (head: readonly string[], rows: readonly Record<string, string>[]): string[] => [
  ...head,
  ...[...new Set(rows.flatMap((row) => Object.keys(row)))].filter((name) => !head.includes(name) && name !== ""),
];

const remark = (part: WorkPart): string => [part.title, part.typical && `typical ${part.typical}`, part.replace].filter(Boolean).join("; ");

/** Roles and names that job.json states itself: a second row for one of them would be a contradiction. */
function stated(files: JobFiles | undefined): Set<string> {
  if (files === undefined) return new Set();
  const job = JSON.parse(files.job.text) as { stages?: { id: string; parts?: object }[] };
  return new Set((job.stages ?? []).flatMap(({ id, parts = {} }) => Object.keys(parts).map((role) => `${id} ${role}`)));
}

/**
 * The form for parts.csv: rows that the job has already as they are, then one for every part of its stages that nobody has named.
 *
 * @param files the job that the sheet is for; absent for a sheet of templates
 */
export function partsForm(worksheet: Worksheet, files?: JobFiles): WorkTable {
  const known = rowsOf(files?.parts?.text);
  const taken = new Set([...stated(files), ...known.map(({ stage, role }) => `${stage} ${role}`)]);
  const blank = worksheet.stages.flatMap(({ id, template, parts }) =>
    parts
      .filter(({ role, optional }) => template !== undefined && role !== undefined && !optional && !taken.has(`${id} ${role}`))
      .map((part) => ({ stage: id, role: part.role ?? "", name: part.name, note: remark(part) })),
  );
  return { head: headWith(PARTS_HEAD, known), rows: [...known, ...blank] };
}

function windowWords({ low, high, quantity, title, source }: WorkPoint): string {
  if (low === undefined || high === undefined) return title ?? "";
  const word = (value: number) => formatQuantity(value, READING_DIMENSION[quantity]);
  return `${title === undefined ? "" : `${title}; `}expected ${word(low)} to ${word(high)} (${source})`;
}

/** The form for readings.csv: readings that were taken already, then every other one in the order of work, its value blank. */
export function readingsForm(worksheet: Worksheet, files?: JobFiles): WorkTable {
  const known = rowsOf(files?.readings?.text);
  const points = worksheet.stages.flatMap((stage) => stage.points);
  const order = worksheet.conditions.map(({ id }) => id);
  const sorted = points.toSorted((a, b) => order.indexOf(a.condition) - order.indexOf(b.condition));
  const amps = (point: WorkPoint) => point.quantity.endsWith("amps");
  const blank = sorted.map((point) => ({
    at: point.at,
    to: amps(point) ? "" : point.to,
    quantity: point.quantity,
    condition: point.condition,
    life: "found",
    note: windowWords(point),
  }));
  const taken = new Set(known.map(({ at, quantity, condition = "" }) => [at, quantity, condition].join("|")));
  return {
    head: headWith(READINGS_HEAD, known),
    rows: [...known, ...blank.filter(({ at, quantity, condition }) => !taken.has([at, quantity, condition].join("|")))],
  };
}

/**
 * A job.json for a sheet of templates: its stages with every terminal bound to a point of the terminal's own name, for the bench to
 * rename. One template alone keeps its typical source and load, so that it can be graded at once.
 */
export function startingJob(worksheet: Worksheet, dataset: Dataset): Job {
  const jobs = worksheet.stages.flatMap(({ template = "" }) => {
    const record = dataset.stages.get(template);
    return record === undefined ? [] : [aloneJob(record)];
  });
  const [first] = jobs;
  const base: Job =
    first !== undefined && jobs.length === 1 ? first : { format: 1, title: "", chassis: { line: { designVolts: "117 V", hertz: 60 } } };
  return { ...base, title: worksheet.title, datasetVersion: worksheet.datasetVersion, stages: jobs.flatMap(({ stages = [] }) => stages) };
}
