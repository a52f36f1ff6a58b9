import type { SourceText } from "@underchassis/source-text";
import { isRecordKind } from "../model/fileKind.ts";
import type { FileEntry, FileSource } from "../model/fileSource.ts";
import type { Collection, RawFile } from "../model/subjects.ts";
import { parseRecord, readRawFile } from "../read/readRawFile.ts";
import { readTable } from "../read/readTable.ts";
import { idsOf } from "../shared/idsOf.ts";
import { referencesOf } from "../shared/referencesOf.ts";
import { sourceCells } from "../shared/sourceCells.ts";

/** Reads files again for the places of what is wrong in them. */
export class Recaller {
  readonly #entries: ReadonlyMap<string, FileEntry>;
  readonly #source: FileSource;
  #last: RawFile | undefined;

  constructor(entries: readonly FileEntry[], source: FileSource) {
    this.#entries = new Map(entries.map((entry) => [entry.path, entry]));
    this.#source = source;
  }

  /** Text of a file of the run. @throws Error when it is gone */
  text(path: string): string {
    return this.#file(path).text;
  }

  sourceText(path: string): SourceText {
    return this.#file(path).source();
  }

  recall: Collection["recall"] = (path) => {
    const file = this.#file(path);
    if (path.endsWith(".csv")) {
      const table = readTable(file);
      if (table === undefined) return { references: [], ids: [] };
      const sources = sourceCells(table, undefined).map(({ text, span }) => ({ kind: "source" as const, id: text, at: span }));
      const ids = table.rows.flatMap(({ cells }) => (cells[0] === undefined ? [] : [{ id: cells[0].text, at: cells[0].span }]));
      return { references: table.kind === "sources" ? [] : sources, ids, table };
    }
    if (file.value === undefined) parseRecord(file);
    if (!isRecordKind(file.kind) || file.value === undefined)
      return { references: [], ids: [], ...(file.value === undefined ? {} : { value: file.value.parsed }) };
    const { parsed } = file.value;
    return {
      references: referencesOf(file.kind, parsed),
      ids: idsOf(file.kind, parsed).map(({ id, path: at }) => ({ id, at: { path: at } })),
      value: parsed,
    };
  };

  #file(path: string): RawFile {
    if (this.#last?.path === path) return this.#last;
    const entry = this.#entries.get(path);
    if (entry === undefined) throw new Error(`${path} is no file of this run`);
    this.#last = readRawFile(entry, this.#source.read(path));
    return this.#last;
  }
}
