import { listOf, type Path, recordOf, textOf } from "@underchassis/source-text";
import type { RecordKind } from "../model/fileKind.ts";
import type { ReferenceKind } from "../model/subjects.ts";

/** What an id may be an id of. */
export type Defined = ReferenceKind | "worked-example" | "rule-of-thumb";

type Found = (of: Defined, id: string, ...path: (string | number)[]) => void;

/** Everything that a record defines, with the place of each name. */
export function idsOf(kind: RecordKind, value: unknown): { of: Defined; id: string; path: Path }[] {
  const ids: { of: Defined; id: string; path: Path }[] = [];
  eachId(kind, value, (of, id, ...path) => ids.push({ of, id, path }));
  return ids;
}

/** The same without making a list: called for every file of a run. The path comes last, step by step. */
export function eachId(kind: RecordKind, value: unknown, found: Found): void {
  const record = recordOf(value);
  switch (kind) {
    case "stage":
      own(record, "stage", found);
      eachOf(record.parts, "role", (role, index) => found("role", role, "parts", index, "role"));
      break;
    case "tube":
      for (const [index, name] of listOf(record.names).entries()) {
        const text = textOf(name);
        if (text !== undefined) found("tube", text.toUpperCase(), "names", index);
      }
      break;
    case "caution":
    case "failure-note":
    case "rule-of-thumb":
      own(record, kind, found);
      break;
    case "worked-example":
      eachOf(record.examples, "id", (id, index) => found("worked-example", id, "examples", index, "id"));
      break;
    case "example-record":
    case "manifest":
    case "table-descriptions":
      break;
  }
}

function own(record: Readonly<Record<string, unknown>>, of: Defined, found: Found): void {
  const id = textOf(record.id);
  if (id !== undefined) found(of, id, "id");
}

function eachOf(list: unknown, property: string, found: (text: string, index: number) => void): void {
  const items = listOf(list);
  for (let index = 0; index < items.length; index++) {
    const text = textOf(recordOf(items[index])[property]);
    if (text !== undefined) found(text, index);
  }
}

/** Kinds whose ids only one file may define. Roles recur from template to template. */
export const UNIQUE: readonly Defined[] = ["stage", "tube", "caution", "failure-note", "rule-of-thumb", "worked-example"];
