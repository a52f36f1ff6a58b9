import type { TableDescriptions } from "@underchassis/dataset";
import type { FileKind } from "../model/fileKind.ts";
import type { Collection, RawFile, RecordFile, TableFile } from "../model/subjects.ts";
import { type Defined, eachId } from "../shared/idsOf.ts";
import { eachOtherReference, namesSources } from "../shared/referencesOf.ts";
import { sourceCells } from "../shared/sourceCells.ts";

/** Gathers what rules across files need, and lets go of everything else. */
export class Collector {
  readonly #paths = new Map<FileKind, string[]>();
  readonly #all = new Set<string>();
  readonly #definitions = new Map<Defined, Map<string, string[]>>();
  readonly #references = new Map<Defined, Map<string, string[]>>();
  #incomplete = false;
  #descriptions: TableDescriptions | undefined;

  /** Takes note of a file that is there, whatever is in it. */
  see(file: RawFile): void {
    this.#all.add(file.path);
    if (file.kind !== undefined) push(this.#paths, file.kind, file.path);
  }

  /** Takes what a parsed record defines and refers to. */
  record({ path, kind, value, survey }: RecordFile): void {
    eachId(kind, value, (of, id) => this.#define(of, id, path));
    if (namesSources(kind)) for (const id of survey.sources) this.#refer("source", id, path);
    eachOtherReference(kind, value, (of, id) => this.#refer(of, id, path));
  }

  /** Takes the sources and device types of a table. */
  table(table: TableFile): void {
    if (table.kind === "sources") for (const { cells } of table.rows) this.#define("source", cells[0]?.text ?? "", table.path);
    else {
      for (const cell of sourceCells(table, this.#descriptions)) this.#refer("source", cell.text, table.path);
      if (table.path.endsWith("/diodes.csv"))
        for (const { cells } of table.rows) this.#define("tube", (cells[0]?.text ?? "").toUpperCase(), table.path);
    }
  }

  /** A file that cannot be read still lies there: others may refer to it by the name that it has. */
  unreadable(file: RawFile): void {
    this.#incomplete = true;
    const id = file.path.slice(file.path.lastIndexOf("/") + 1).replace(/\.json$/, "");
    if (file.kind === "caution" || file.kind === "failure-note" || file.kind === "stage" || file.kind === "rule-of-thumb")
      this.#define(file.kind, id, file.path);
    if (file.kind === "tube") this.#define("tube", id.toUpperCase(), file.path);
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
      descriptions: this.#descriptions,
      ...more,
    };
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

function push<K, V>(map: Map<K, V[]>, key: K, value: V): void {
  const list = map.get(key);
  if (list === undefined) map.set(key, [value]);
  else list.push(value);
}
