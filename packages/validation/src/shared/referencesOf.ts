import { isRecord, listOf, type Path, recordOf, textOf } from "@underchassis/source-text";
import type { RecordKind } from "../model/fileKind.ts";
import type { Reference, ReferenceKind } from "../model/subjects.ts";
import { textsOf } from "./targets.ts";

type Found = (kind: ReferenceKind, id: string, ...path: (string | number)[]) => void;

/** Everything that a record refers to by id. Looks no further than the shape allows, so it takes records that break their schema. */
export function referencesOf(kind: RecordKind, value: unknown): Reference[] {
  const references: Reference[] = [];
  const found: Found = (of, id, ...path) => references.push({ kind: of, id, at: { path } });
  if (namesSources(kind)) sources(value, [], found);
  eachOtherReference(kind, value, found);
  return references;
}

/** Whether records of a kind name sources. */
export function namesSources(kind: RecordKind): boolean {
  return kind !== "manifest" && kind !== "example-record" && kind !== "table-descriptions" && kind !== "worked-example";
}

/** The references but those to sources, without making a list: called for every file of a run. The path comes last, step by step. */
export function eachOtherReference(kind: RecordKind, value: unknown, found: Found): void {
  const record = recordOf(value);
  if (kind === "worked-example")
    for (const [index, example] of listOf(record.examples).entries()) {
      const formula = textOf(recordOf(example).formula);
      if (formula !== undefined) found("formula", formula, "examples", index, "formula");
    }
  if (!namesSources(kind)) return;
  each(record.cautions, (text, index) => found("caution", text, "cautions", index));
  each(record.failureNotes, (text, index) => found("failure-note", text, "failureNotes", index));
  if (kind === "failure-note") each(record.roles, (text, index) => found("role", text, "roles", index));
  if (kind === "rule-of-thumb") places(record.appliesTo, found, "appliesTo");
  if (kind === "caution") for (const [index, place] of listOf(record.appliesTo).entries()) places(place, found, "appliesTo", index);
  if (kind === "stage") tubes(record.parts, found);
}

/** The roles and templates of a place that something applies to. */
function places(place: unknown, found: Found, ...path: (string | number)[]): void {
  const { roles, templates } = recordOf(place);
  each(roles, (text, index) => found("role", text, ...path, "roles", index));
  each(templates, (text, index) => found("stage", text, ...path, "templates", index));
}

function each(list: unknown, found: (text: string, index: number) => void): void {
  const items = listOf(list);
  for (let index = 0; index < items.length; index++) {
    const text = textOf(items[index]);
    if (text !== undefined) found(text, index);
  }
}

/** `source` and `sources` wherever they stand, as the survey of a record gathers them, with their places. */
function sources(value: unknown, path: Path, found: Found): void {
  if (Array.isArray(value)) {
    for (const [index, item] of value.entries()) sources(item, [...path, index], found);
  } else if (isRecord(value)) {
    for (const [name, member] of Object.entries(value)) {
      if (name === "source" && typeof member === "string") found("source", member, ...path, name);
      else if (name === "sources") for (const { text, path: at } of textsOf(member, [...path, name])) found("source", text, ...at);
      else sources(member, [...path, name], found);
    }
  }
}

const TUBES = new Set(["tube", "regulator-tube", "rectifier"]);
/** Dry rectifiers described by their ratings, which no record is needed for. */
const RATINGS = /^(selenium|silicon|germanium|copper)\b/i;

function tubes(parts: unknown, found: Found): void {
  const list = listOf(parts);
  for (let index = 0; index < list.length; index++) {
    const { kind, type } = recordOf(list[index]);
    if (typeof kind === "string" && TUBES.has(kind) && typeof type === "string" && !(kind === "rectifier" && RATINGS.test(type)))
      found("tube", type.trim().toUpperCase(), "parts", index, "type");
  }
}
