import type { CautionRecord, Dataset, FailureNote, Source, StageTemplate, TableRow, TubeRecord } from "@underchassis/dataset";
import { recordOf } from "@underchassis/source-text";
import type { Collection } from "../model/subjects.ts";

/** Records by id, each read when it is asked for: a run over thousands of files holds few of them at a time. */
class RecordMap<T> implements ReadonlyMap<string, T> {
  readonly #paths: ReadonlyMap<string, readonly string[]>;
  readonly #read: (path: string) => T | undefined;

  constructor(paths: ReadonlyMap<string, readonly string[]>, read: (path: string) => T | undefined) {
    this.#paths = paths;
    this.#read = read;
  }

  get size(): number {
    return this.#paths.size;
  }

  has(id: string): boolean {
    return this.#paths.has(id);
  }

  get(id: string): T | undefined {
    const path = this.#paths.get(id)?.[0];
    return path === undefined ? undefined : this.#read(path);
  }

  keys(): MapIterator<string> {
    return this.#paths.keys();
  }

  *values(): MapIterator<T> {
    for (const [, value] of this.entries()) yield value;
  }

  *entries(): MapIterator<[string, T]> {
    for (const id of this.#paths.keys()) {
      const value = this.get(id);
      if (value !== undefined) yield [id, value];
    }
  }

  forEach(work: (value: T, key: string, map: ReadonlyMap<string, T>) => void): void {
    for (const [id, value] of this.entries()) work(value, id, this);
  }

  [Symbol.iterator](): MapIterator<[string, T]> {
    return this.entries();
  }
}

/** Most records that are kept at a time. */
const KEPT = 200;

/** The shared reference as grading takes it, read from the files of a run as it is needed. Records that broke their schema are not there. */
export function lazyDataset(collection: Collection, broken: ReadonlySet<string>): Dataset {
  const kept = new Map<string, unknown>();
  const read = (path: string): unknown => {
    if (broken.has(path) || !path.endsWith(".json")) return undefined;
    const known = kept.get(path);
    if (known !== undefined) return known;
    if (kept.size >= KEPT) kept.clear();
    const { value } = collection.recall(path);
    kept.set(path, value);
    return value;
  };
  const map = <T>(kind: "stage" | "tube" | "caution" | "failure-note") =>
    new RecordMap<T>(sound(collection.definitions(kind), broken), (path) => read(path) as T | undefined);
  return {
    version: String(recordOf(read("datasets/manifest.json")).datasetVersion ?? "0.0.0"),
    stages: map<StageTemplate>("stage"),
    tubes: map<TubeRecord>("tube"),
    cautions: map<CautionRecord>("caution"),
    failureNotes: map<FailureNote>("failure-note"),
    // Grading asks for neither: they are for those who look something up.
    rulesOfThumb: new Map(),
    tableTitles: [],
    sources: new Map(rowsOf(collection, "datasets/sources.csv").map((row) => [row.id ?? "", row as unknown as Source])),
    tables: new Map(
      collection.files("table").map((path) => [path.slice(path.lastIndexOf("/") + 1, -".csv".length), rowsOf(collection, path)]),
    ),
  };
}

function sound(paths: ReadonlyMap<string, readonly string[]>, broken: ReadonlySet<string>): ReadonlyMap<string, readonly string[]> {
  return new Map([...paths].filter(([, [path = ""]]) => !broken.has(path) && path.endsWith(".json")));
}

function rowsOf(collection: Collection, path: string): TableRow[] {
  const table = collection.has(path) ? collection.recall(path).table : undefined;
  if (table === undefined) return [];
  return table.rows.map(({ cells }) => Object.fromEntries(table.header.map(({ text }, index) => [text, cells[index]?.text ?? ""])));
}
