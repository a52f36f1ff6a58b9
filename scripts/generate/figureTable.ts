import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { parse } from "csv-parse/sync";
import { addFigures, countFigures, countRow, FIGURE_KINDS, type FigureCounts, noFigures } from "./countFigures.ts";
import type { GeneratedFile } from "./settle.ts";

const FILE = "DEVELOPERS.md";
const START = "<!-- figures: npm run generate writes what stands between these marks -->";
const END = "<!-- /figures -->";

/** Folders of datasets/ whose figures are counted, as the table calls them. */
const DATASETS: readonly (readonly [string, string])[] = [
  ["stages", "stage templates"],
  ["tubes", "tubes"],
  ["tables", "tables"],
  ["failure-notes", "failure notes"],
  ["rules-of-thumb", "rules of thumb"],
  ["cautions", "cautions"],
  ["worked-examples", "worked examples"],
];

const rowsOf = (file: string): Record<string, string>[] =>
  parse(readFileSync(file, "utf8"), { columns: true, bom: true, skip_empty_lines: true, trim: true });

const filesBelow = (folder: string): string[] =>
  readdirSync(folder, { recursive: true, encoding: "utf8" })
    .sort()
    .map((name) => join(folder, name));

function countsOf(folder: string, kindOf: ReadonlyMap<string, string>): FigureCounts {
  const files = filesBelow(join("datasets", folder));
  const records = files.filter((file) => file.endsWith(".json") && !file.endsWith("tables.json"));
  const rows = files.filter((file) => file.endsWith(".csv")).flatMap(rowsOf);
  return [
    ...records.map((file) => countFigures(JSON.parse(readFileSync(file, "utf8")), kindOf)),
    ...rows.map((row) => countRow(row, kindOf)),
  ].reduce(addFigures, noFigures());
}

const COLUMNS = [...FIGURE_KINDS].reverse();
const HEADS: Readonly<Record<(typeof FIGURE_KINDS)[number], string>> = {
  published: "published",
  derived: "derived",
  "common-practice": "common practice",
  "from-memory": "from memory",
};

const rowText = (name: string, counts: FigureCounts): string => {
  const total = COLUMNS.reduce((sum, kind) => sum + counts[kind], 0);
  return `| ${[name, ...COLUMNS.map((kind) => counts[kind]), total].join(" | ")} |`;
};

function tableText(): string {
  const kindOf = new Map(rowsOf("datasets/sources.csv").map(({ id = "", kind = "" }) => [id, kind]));
  const counted = DATASETS.map(([folder, name]) => ({ name, counts: countsOf(folder, kindOf) }));
  return [
    `| dataset | ${COLUMNS.map((kind) => HEADS[kind]).join(" | ")} | all |`,
    `| --- |${" ---: |".repeat(COLUMNS.length + 1)}`,
    ...counted.map(({ name, counts }) => rowText(name, counts)),
    rowText("all", counted.map(({ counts }) => counts).reduce(addFigures, noFigures())),
  ].join("\n");
}

/**
 * DEVELOPERS.md with the table of how well the figures of each dataset are founded, between its marks.
 *
 * @throws Error when the marks are not there
 */
export function figureTableFile(): GeneratedFile[] {
  const text = readFileSync(FILE, "utf8");
  const [start, end] = [text.indexOf(START), text.indexOf(END)];
  if (start < 0 || end < start) throw new Error(`${FILE} must hold the lines ${START} and ${END}`);
  return [{ path: FILE, text: `${text.slice(0, start + START.length)}\n\n${tableText()}\n\n${text.slice(end)}` }];
}
