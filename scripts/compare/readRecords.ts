import { existsSync, readdirSync, readFileSync } from "node:fs";
import { basename, join } from "node:path";
import { parse } from "csv-parse/sync";

/** One record of the reference: what it is, what it is called, where it stands. */
export interface ReferenceRecord {
  /** Folder or table: `stages`, `tubes`, `sources`, `tables/wire-gauges`, `schemas`. */
  kind: string;
  id: string;
  file: string;
  value: Record<string, unknown>;
}

/** Folders and files of datasets/ that hold no reference records: jobs are graded, the manifest holds versions. */
const NOT_RECORDS = /^(jobs|examples)\/|^manifest\.json$/;

interface TableDescription {
  file: string;
  key: string[];
}

/** A file or record of a revision that cannot be read. */
export class RecordError extends Error {
  override name = "RecordError";
}

function json(root: string, file: string): Record<string, unknown> {
  try {
    const value: unknown = JSON.parse(readFileSync(join(root, file), "utf8"));
    if (typeof value !== "object" || value === null || Array.isArray(value)) throw new Error("it is not an object");
    return value as Record<string, unknown>;
  } catch (error) {
    throw new RecordError(`${file}: ${error instanceof Error ? error.message : error}`);
  }
}

function rows(root: string, file: string): Record<string, string>[] {
  try {
    return parse(readFileSync(join(root, file), "utf8"), { columns: true, bom: true, skip_empty_lines: true, trim: true });
  } catch (error) {
    throw new RecordError(`${file}: ${error instanceof Error ? error.message : error}`);
  }
}

/** Files below a folder by their paths, slashes forward, sorted. */
function filesBelow(folder: string): string[] {
  if (!existsSync(folder)) return [];
  return readdirSync(folder, { recursive: true, encoding: "utf8" })
    .map((name) => name.replaceAll("\\", "/"))
    .filter((name) => /\.(json|csv)$/.test(name))
    .sort();
}

/** A JSON file as one record, or, where it is a list of entries with ids, as one record an entry. */
function jsonRecords(root: string, file: string): ReferenceRecord[] {
  const value = json(root, `datasets/${file}`);
  const kind = file.split("/")[0] ?? "";
  const at = (id: unknown, entry: Record<string, unknown>, inner = kind): ReferenceRecord => ({
    kind: inner,
    id: String(id),
    file: `datasets/${file}`,
    value: entry,
  });
  if (file === "tables/tables.json") {
    const { tables = [], ...rest } = value as { tables?: Record<string, unknown>[] };
    return [at("tables.json", rest, "table descriptions"), ...tables.map((table) => at(table.file, table, "table descriptions"))];
  }
  const { examples, $schema: _, ...rest } = value as { examples?: Record<string, unknown>[]; $schema?: string };
  const itself = at(value.id ?? basename(file, ".json"), rest);
  return Array.isArray(examples) ? [itself, ...examples.map((example) => at(example.id, example, "worked examples"))] : [itself];
}

function csvRecords(root: string, file: string, described: readonly TableDescription[]): ReferenceRecord[] {
  const kind = file.replace(/\.csv$/, "");
  const inTables = file.startsWith("tables/") ? file.slice("tables/".length) : undefined;
  const key = inTables === undefined ? ["id"] : described.find((table) => table.file === inTables)?.key;
  return rows(root, `datasets/${file}`).map((row) => {
    const names = key ?? Object.keys(row).slice(0, 1);
    return { kind, id: names.map((name) => row[name] ?? "").join(", "), file: `datasets/${file}`, value: row };
  });
}

function tableDescriptions(root: string): TableDescription[] {
  const file = "datasets/tables/tables.json";
  return existsSync(join(root, file)) ? ((json(root, file).tables ?? []) as TableDescription[]) : [];
}

/** By kind and id. A row whose key stands twice in its table is kept under the key and its count. */
function indexed(records: readonly ReferenceRecord[]): Map<string, ReferenceRecord> {
  const index = new Map<string, ReferenceRecord>();
  for (const record of records) {
    const key = `${record.kind} ${record.id}`;
    let name = key;
    for (let count = 2; index.has(name); count++) name = `${key} (${count})`;
    index.set(name, record);
  }
  return index;
}

/**
 * Every record of a tree: datasets (without jobs) and schemas. Keys of the map are `kind` and `id`.
 *
 * @param root folder that holds datasets/ and schemas/
 * @param keysOf folder whose tables.json says by which columns rows are told apart: the same one for both sides of a comparison
 * @throws RecordError naming a file that cannot be read
 */
export function readRecords(root: string, keysOf = root): Map<string, ReferenceRecord> {
  const files = filesBelow(join(root, "datasets")).filter((file) => !NOT_RECORDS.test(file));
  const described = tableDescriptions(keysOf);
  const records = files.flatMap((file) => (file.endsWith(".csv") ? csvRecords(root, file, described) : jsonRecords(root, file)));
  const schemas = filesBelow(join(root, "schemas")).map((file): ReferenceRecord => {
    return { kind: "schemas", id: file.replace(/\.schema\.json$/, ""), file: `schemas/${file}`, value: json(root, `schemas/${file}`) };
  });
  return indexed([...records, ...schemas]);
}

/** The dataset's version that a tree's manifest states. */
export function versionOf(root: string): string {
  const { datasetVersion } = json(root, "datasets/manifest.json");
  if (typeof datasetVersion !== "string" || !/^\d+\.\d+\.\d+$/.test(datasetVersion))
    throw new RecordError("datasets/manifest.json: datasetVersion is no version like 1.2.3");
  return datasetVersion;
}
