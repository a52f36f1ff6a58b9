import { FORBIDDEN_NAMES } from "@underchassis/source-text";
import type { SchemaNode } from "../shared/schemaOrder.ts";
import { RECORD_LIMITS } from "./recordLimits.ts";
import { mayBeLong } from "./wordCount.ts";

/** What one walk over a parsed record gathers for rules that would each have to walk it. */
export interface Survey {
  /** Property names, of all objects together. */
  names: number;
  /** It holds a number beyond all bounds, a name that reaches into JavaScript's own objects, nesting or lists without end. */
  odd: boolean;
  /** Some property stands behind one that it should stand before. */
  misplaced: boolean;
  /** Some text may hold a sentence that is too long. */
  wordy: boolean;
  /** Ids under `source` and `sources` in the order in which they stand; what is named twice running is named once. */
  sources: readonly string[];
}

interface Found extends Survey {
  sources: string[];
  /** Inside `sources` no more sources are looked for. */
  inSources: boolean;
}

/** Largest number that a datum may be; the reader of quantities draws the same line. */
const LARGEST_NUMBER = 1e15;
/** Looked at before the name itself: most names are of other lengths. */
const FORBIDDEN_LENGTHS = [...FORBIDDEN_NAMES].map(({ length }) => length);
const [SHORTEST, LONGEST] = [Math.min(...FORBIDDEN_LENGTHS), Math.max(...FORBIDDEN_LENGTHS)];
const NO_SHAPE: Pick<ReturnType<SchemaNode>, "properties" | "rest"> = { properties: new Map(), rest: undefined };

/** Walks a parsed record once. @param shape the order of its properties, where its kind has a schema */
export function surveyOf(value: unknown, shape?: SchemaNode): Survey {
  const found: Found = { names: 0, odd: false, misplaced: false, wordy: false, sources: [], inSources: false };
  walk(value, 1, shape, found);
  return found;
}

function walk(value: unknown, depth: number, shape: SchemaNode | undefined, found: Found): void {
  if (typeof value === "string") {
    if (!found.wordy && mayBeLong(value)) found.wordy = true;
  } else if (typeof value === "number") {
    if (!(Math.abs(value) <= LARGEST_NUMBER)) found.odd = true;
  } else if (typeof value === "object" && value !== null) {
    if (depth > RECORD_LIMITS.depth) found.odd = true;
    else if (Array.isArray(value)) {
      if (value.length > RECORD_LIMITS.members) found.odd = true;
      const items = shape?.().items;
      for (let index = 0; index < value.length; index++) walk(value[index], depth + 1, items, found);
    } else walkMembers(value as Record<string, unknown>, depth, shape, found);
  }
}

function walkMembers(value: Record<string, unknown>, depth: number, shape: SchemaNode | undefined, found: Found): void {
  const { properties, rest } = shape?.() ?? NO_SHAPE;
  let last = -1;
  let count = 0;
  for (const name in value) {
    count++;
    if (name.length >= SHORTEST && name.length <= LONGEST && FORBIDDEN_NAMES.has(name)) found.odd = true;
    const property = properties.get(name);
    if (property !== undefined) {
      if (property.place < last) found.misplaced = true;
      else last = property.place;
    }
    const member = value[name];
    if (name === "sources" && !found.inSources) {
      found.inSources = true;
      if (Array.isArray(member)) for (const item of member) if (typeof item === "string" && item !== "") note(item, found);
      walk(member, depth + 1, property?.node ?? rest, found);
      found.inSources = false;
    } else {
      if (name === "source" && typeof member === "string" && !found.inSources) note(member, found);
      walk(member, depth + 1, property?.node ?? rest, found);
    }
  }
  if (count > RECORD_LIMITS.members) found.odd = true;
  found.names += count;
}

function note(source: string, { sources }: Found): void {
  if (sources[sources.length - 1] !== source) sources.push(source);
}
