import type { CautionRecord, FailureNote, RuleOfThumb, StageTemplate, TubeRecord } from "./generated/index.ts";

/** Where a figure comes from: a published work, the practice of the trade, or memory. */
export interface Source {
  id: string;
  kind: string;
  title: string;
  detail: string;
}

/** A row of a reference table: column name to the text that stands there. */
export type TableRow = Readonly<Record<string, string>>;

/** What a reference table is about, for those who look for one. */
export interface TableTitle {
  /** Name of the table: its file without the ending. */
  name: string;
  title: string;
}

/** One record with the file that it was read from, for messages. */
export interface Filed<T> {
  file: string;
  record: T;
}

/** Everything that lies in the datasets folder, parsed but not yet indexed. */
export interface DatasetRecords {
  version: string;
  stages: readonly Filed<StageTemplate>[];
  tubes: readonly Filed<TubeRecord>[];
  cautions: readonly Filed<CautionRecord>[];
  failureNotes: readonly Filed<FailureNote>[];
  rulesOfThumb?: readonly Filed<RuleOfThumb>[];
  sources: readonly Filed<Source>[];
  tables: ReadonlyMap<string, readonly TableRow[]>;
  tableTitles?: readonly TableTitle[];
}

/** The shared reference, indexed. Tubes stand under every one of their names, in capitals. */
export interface Dataset {
  version: string;
  stages: ReadonlyMap<string, StageTemplate>;
  tubes: ReadonlyMap<string, TubeRecord>;
  cautions: ReadonlyMap<string, CautionRecord>;
  failureNotes: ReadonlyMap<string, FailureNote>;
  rulesOfThumb: ReadonlyMap<string, RuleOfThumb>;
  sources: ReadonlyMap<string, Source>;
  tables: ReadonlyMap<string, readonly TableRow[]>;
  tableTitles: readonly TableTitle[];
}

/** The datasets folder is missing, cannot be read, or contradicts itself. The message names the file. */
export class DatasetError extends Error {
  override name = "DatasetError";
}

function indexBy<T>(what: string, filed: readonly Filed<T>[], keysOf: (record: T) => readonly string[]): ReadonlyMap<string, T> {
  const index = new Map<string, T>();
  const fileOf = new Map<string, string>();
  for (const { file, record } of filed) {
    for (const key of new Set(keysOf(record))) {
      const earlier = fileOf.get(key);
      if (earlier !== undefined) throw new DatasetError(`${file}: ${what} "${key}" is already described in ${earlier}`);
      index.set(key, record);
      fileOf.set(key, file);
    }
  }
  return index;
}

/**
 * Indexes the records of a datasets folder.
 *
 * @param records parsed records; whether each is well formed is for the validation to say
 * @returns maps by id; tubes by each of their names in capitals
 * @throws DatasetError when two records claim one id or one tube name
 */
export function buildDataset(records: DatasetRecords): Dataset {
  const byId = (record: { id: string }) => [record.id];
  return {
    version: records.version,
    stages: indexBy("stage template", records.stages, byId),
    tubes: indexBy("tube", records.tubes, (tube) => tube.names.map((name) => name.toUpperCase())),
    cautions: indexBy("caution", records.cautions, byId),
    failureNotes: indexBy("failure note", records.failureNotes, byId),
    rulesOfThumb: indexBy("rule of thumb", records.rulesOfThumb ?? [], byId),
    sources: indexBy("source", records.sources, byId),
    tables: records.tables,
    tableTitles: records.tableTitles ?? [],
  };
}
