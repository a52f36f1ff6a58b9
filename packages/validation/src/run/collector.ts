import type { TableDescriptions } from "@underchassis/dataset";
import { listOf, recordOf } from "@underchassis/source-text";
import { type FileKind, isRecordKind, type RecordKind } from "../model/fileKind.ts";
import type { Collection, RawFile, RecordFile, TableFile } from "../model/subjects.ts";
import { salvage } from "../read/salvage.ts";
import { type Defined, eachId } from "../shared/idsOf.ts";
import { eachOtherReference, namesSources } from "../shared/referencesOf.ts";
import { sourceCells } from "../shared/sourceCells.ts";

/** Gathers what rules across files need, and lets go of everything else. */
export class Collector {
  readonly #paths = new Map<FileKind, string[]>();
  readonly #all = new Set<string>();
  readonly #definitions = new Map<Defined, Map<string, string[]>>();
  readonly #references = new Map<Defined, Map<string, string[]>>();
  readonly #unknown = new Set<Defined>();
  #incomplete = false;
  #descriptions: TableDescriptions | undefined;

  /** Takes note of a file that is there, whatever is in it. */
  see(file: RawFile): void {
    this.#all.add(file.path);
    if (file.kind !== undefined) push(this.#paths, file.kind, file.path);
  }

  /** Takes what a parsed record defines and refers to. */
  record({ path, kind, value, survey }: RecordFile): void {
    this.#defineAll(kind, value, path);
    if (namesSources(kind)) for (const id of survey.sources) this.#refer("source", id, path);
    eachOtherReference(kind, value, (of, id) => this.#refer(of, id, path));
  }

  /**
   * Takes the sources and device types of a table.
   *
   * @param whole - false where rows were left unread
   */
  table(table: TableFile, whole: boolean): void {
    const defines = definedBy(table.path);
    if (defines !== undefined) {
      // Under another header, or cut by other marks than commas, the first cells are no ids.
      if (!whole || table.header[0]?.text !== defines.column) this.#unknown.add(defines.of);
      for (const { cells } of table.rows) this.#define(defines.of, defines.idOf(cells[0]?.text ?? ""), table.path);
    }
    if (table.kind !== "sources") for (const cell of sourceCells(table, this.#descriptions)) this.#refer("source", cell.text, table.path);
  }

  /** A file that cannot be read still lies there: others may refer to it by the name that it has, and to what can be made out in it. */
  unreadable(file: RawFile): void {
    const { path, kind, text } = file;
    this.#incomplete = true;
    const defines = definedBy(path);
    if (defines !== undefined) this.#unknown.add(defines.of);
    if (!isRecordKind(kind)) return;
    const value = salvage(text);
    // Of a file that breaks off, the roles behind its end are lost.
    if (kind === "stage" && (listOf(recordOf(value).parts).length === 0 || file.faults().some(({ code }) => code === "bracket-unclosed")))
      this.#unknown.add("role");
    this.#defineAll(kind, value, path);
  }

  describe(descriptions: TableDescriptions): void {
    this.#descriptions = descriptions;
  }

  get descriptions(): TableDescriptions | undefined {
    return this.#descriptions;
  }

  collection(more: Pick<Collection, "recall" | "namedInCode" | "jobProblems">): Collection {
    return {
      files: (kind) => this.#paths.get(kind) ?? [],
      has: (path) => this.#all.has(path),
      definitions: (kind) => this.#definitions.get(kind) ?? new Map<string, string[]>(),
      references: (kind) => this.#references.get(kind) ?? new Map<string, string[]>(),
      incomplete: this.#incomplete,
      unknown: this.#unknown,
      descriptions: this.#descriptions,
      ...more,
    };
  }

  /** What a record defines, and the id that its name promises: a record with a wrong id, or none, is told of itself and not of all that name it. */
  #defineAll(kind: RecordKind, value: unknown, path: string): void {
    const own = namedByFile(kind, path);
    let named = own === undefined;
    eachId(kind, value, (of, id) => {
      this.#define(of, id, path);
      // A tube goes by many names, and its file by one of them.
      if (of === own?.of && (of === "tube" || id === own.id)) named = true;
    });
    if (!named && own !== undefined) this.#define(own.of, own.id, path);
  }

  #define(kind: Defined, id: string, path: string): void {
    let ids = this.#definitions.get(kind);
    if (ids === undefined) {
      ids = new Map();
      this.#definitions.set(kind, ids);
    }
    const files = ids.get(id);
    if (files === undefined) ids.set(id, [path]);
    // Roles recur in every template: that there is one is all that is asked.
    else if (kind !== "role") files.push(path);
  }

  #refer(kind: Defined, id: string, path: string): void {
    let ids = this.#references.get(kind);
    if (ids === undefined) {
      ids = new Map();
      this.#references.set(kind, ids);
    }
    const files = ids.get(id);
    if (files === undefined) ids.set(id, [path]);
    // One file after the other: who was last is all that need be looked at.
    else if (files[files.length - 1] !== path) files.push(path);
  }
}

/** The tables whose first column holds ids that others refer to. */
function definedBy(path: string): { of: Defined; column: string; idOf(cell: string): string } | undefined {
  if (path === "datasets/sources.csv") return { of: "source", column: "id", idOf: (cell) => cell };
  if (path.endsWith("/diodes.csv")) return { of: "tube", column: "class", idOf: (cell) => cell.toUpperCase() };
  return undefined;
}

function namedByFile(kind: RecordKind, path: string): { of: Defined; id: string } | undefined {
  const id = path.slice(path.lastIndexOf("/") + 1).replace(/\.json$/, "");
  if (kind === "tube") return { of: kind, id: id.toUpperCase() };
  return kind === "caution" || kind === "failure-note" || kind === "stage" || kind === "rule-of-thumb" ? { of: kind, id } : undefined;
}

function push<K, V>(map: Map<K, V[]>, key: K, value: V): void {
  const list = map.get(key);
  if (list === undefined) map.set(key, [value]);
  else list.push(value);
}
