import { isRecord, listOf, type Path, recordOf, textOf } from "@underchassis/source-text";
import type { RecordKind } from "../model/fileKind.ts";
import type { Reference, ReferenceKind } from "../model/subjects.ts";
import { textsOf } from "./targets.ts";

type Found = (kind: ReferenceKind, id: string, path: Path) => void;

/** Everything that a record refers to by id. Looks no further than the shape allows, so it takes records that break their schema. */
export function referencesOf(kind: RecordKind, value: unknown): Reference[] {
  const references: Reference[] = [];
  eachReference(kind, value, (of, id, path) => references.push({ kind: of, id, at: { path } }));
  return references;
}

/** The same without making a list: called for every file of a run. */
export function eachReference(kind: RecordKind, value: unknown, found: Found): void {
  if (kind === "manifest" || kind === "example-record" || kind === "table-descriptions") return;
  const record = recordOf(value);
  if (kind === "worked-example") {
    for (const [index, example] of listOf(record.examples).entries()) {
      const formula = textOf(recordOf(example).formula);
      if (formula !== undefined) found("formula", formula, ["examples", index, "formula"]);
    }
    return;
  }
  sources(value, [], found);
  for (const { text, path } of textsOf(record.cautions, ["cautions"])) found("caution", text, path);
  for (const { text, path } of textsOf(record.failureNotes, ["failureNotes"])) found("failure-note", text, path);
  if (kind === "failure-note") for (const { text, path } of textsOf(record.roles, ["roles"])) found("role", text, path);
  if (kind === "rule-of-thumb")
    for (const { text, path } of textsOf(recordOf(record.appliesTo).roles, ["appliesTo", "roles"])) found("role", text, path);
  if (kind === "stage") tubes(record.parts, found);
}

/** `source` and `sources` wherever they stand. */
function sources(value: unknown, path: Path, found: Found): void {
  if (Array.isArray(value)) {
    for (let index = 0; index < value.length; index++) {
      if (typeof value[index] === "object") sources(value[index], [...path, index], found);
    }
  } else if (isRecord(value)) {
    for (const name of Object.keys(value)) {
      const member = value[name];
      if (name === "source" && typeof member === "string") found("source", member, [...path, name]);
      else if (name === "sources") for (const { text, path: at } of textsOf(member, [...path, name])) found("source", text, at);
      else if (typeof member === "object") sources(member, [...path, name], found);
    }
  }
}

const TUBES = new Set(["tube", "regulator-tube", "rectifier"]);
/** Dry rectifiers described by their ratings, which no record is needed for. */
const RATINGS = /^(selenium|silicon|germanium|copper)\b/i;

function tubes(parts: unknown, found: Found): void {
  for (const [index, part] of listOf(parts).entries()) {
    const { kind, type } = recordOf(part);
    if (typeof kind === "string" && TUBES.has(kind) && typeof type === "string" && !(kind === "rectifier" && RATINGS.test(type)))
      found("tube", type.trim().toUpperCase(), ["parts", index, "type"]);
  }
}
