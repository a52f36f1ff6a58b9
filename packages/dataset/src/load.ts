import { existsSync, readdirSync, readFileSync } from "node:fs";
import { basename, join } from "node:path";
import { parse } from "csv-parse/sync";
import { buildDataset, type Dataset, DatasetError, type Filed, type Source, type TableRow, type TableTitle } from "./dataset.ts";
import { findDatasets } from "./findDatasets.ts";
import type { CautionRecord, FailureNote, RuleOfThumb, StageTemplate, TubeRecord } from "./generated/index.ts";

const reason = (error: unknown): string => (error instanceof Error ? error.message : String(error));

/** Does `work` on a file and puts the file's name before whatever goes wrong. */
function naming<T>(file: string, work: () => T): T {
  try {
    return work();
  } catch (error) {
    throw error instanceof DatasetError ? error : new DatasetError(`${file}: ${reason(error)}`);
  }
}

const readText = (file: string): string => naming(file, () => readFileSync(file, "utf8"));

function readJson<T>(file: string): T {
  const text = readText(file);
  return naming(file, () => JSON.parse(text) as T);
}

function readRows(file: string): TableRow[] {
  const text = readText(file);
  const options = { columns: true, bom: true, skip_empty_lines: true, trim: true } as const;
  return naming(file, () => parse(text, options) as TableRow[]);
}

/** Files below a folder whose names end in `ending`, in the order of their paths. */
function filesBelow(folder: string, ending: string): string[] {
  return naming(folder, () => readdirSync(folder, { recursive: true, encoding: "utf8" }))
    .filter((name) => name.endsWith(ending))
    .sort()
    .map((name) => join(folder, name));
}

const isTextList = (value: unknown): boolean => Array.isArray(value) && value.every((item) => typeof item === "string");

/** Reads records with just enough of a look to index them; whether each is well formed is for the validation to say. */
function readRecords<T extends { id: string }>(folder: string, needsNames = false): Filed<T>[] {
  return filesBelow(folder, ".json").map((file) => {
    const record = readJson<{ id?: unknown; names?: unknown } | null>(file);
    if (typeof record?.id !== "string") throw new DatasetError(`${file}: the record has no id`);
    if (needsNames && !isTextList(record.names)) throw new DatasetError(`${file}: the record has no list of names`);
    return { file, record: record as T };
  });
}

function readSources(file: string): Filed<Source>[] {
  return readRows(file).map(({ id, kind, title, detail }) => {
    if (!id || !kind || !title) throw new DatasetError(`${file}: source "${id ?? ""}" needs an id, a kind and a title`);
    return { file, record: { id, kind, title, detail: detail ?? "" } };
  });
}

/** Tables by their names; folders below `folder` only sort them. */
function readTables(folder: string): ReadonlyMap<string, readonly TableRow[]> {
  const tables = new Map<string, readonly TableRow[]>();
  for (const file of filesBelow(folder, ".csv")) {
    const name = basename(file, ".csv");
    if (tables.has(name)) throw new DatasetError(`${file}: there is a table of this name in another folder`);
    tables.set(name, readRows(file));
  }
  return tables;
}

/** Titles of the tables, as tables.json gives them; none where there is no such file. */
function readTableTitles(file: string): TableTitle[] {
  if (!existsSync(file)) return [];
  const { tables } = readJson<{ tables?: { file?: unknown; title?: unknown }[] }>(file);
  return (tables ?? []).flatMap(({ file: path, title }) =>
    typeof path === "string" && typeof title === "string" ? [{ name: basename(path, ".csv"), title }] : [],
  );
}

/** Records of a folder that earlier versions of the reference do not have. */
const readLaterRecords = <T extends { id: string }>(folder: string): Filed<T>[] => (existsSync(folder) ? readRecords<T>(folder) : []);

export interface LoadOptions {
  /** False: leaves the tables' rows and the sources out, which take longest to read and which nobody needs who only looks up a record. */
  rows?: boolean;
}

/**
 * Reads the whole shared reference from disk.
 *
 * @param root the datasets folder; default: see findDatasets
 * @returns indices over all records
 * @throws DatasetError naming the file, when one is missing, is not JSON or CSV, or repeats an id
 */
export function loadDataset(root: string = findDatasets(), { rows = true }: LoadOptions = {}): Dataset {
  const manifestFile = join(root, "manifest.json");
  const { datasetVersion } = readJson<{ datasetVersion?: unknown }>(manifestFile);
  if (typeof datasetVersion !== "string") throw new DatasetError(`${manifestFile}: datasetVersion is missing`);

  return buildDataset({
    version: datasetVersion,
    stages: readRecords<StageTemplate>(join(root, "stages")),
    tubes: readRecords<TubeRecord>(join(root, "tubes"), true),
    cautions: readRecords<CautionRecord>(join(root, "cautions")),
    failureNotes: readRecords<FailureNote>(join(root, "failure-notes")),
    rulesOfThumb: readLaterRecords<RuleOfThumb>(join(root, "rules-of-thumb")),
    sources: rows ? readSources(join(root, "sources.csv")) : [],
    tables: rows ? readTables(join(root, "tables")) : new Map(),
    tableTitles: readTableTitles(join(root, "tables", "tables.json")),
  });
}
