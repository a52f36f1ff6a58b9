import { findNodeAtLocation, type JSONPath, type Node, parseTree } from "jsonc-parser";
import { FILL, isBlank } from "./blank.ts";

/** A place in a record that still is to be filled in. */
export interface Blank {
  /** JSON pointer (RFC 6901). */
  pointer: string;
  /** 1-based. */
  line: number;
  what: string;
}

const escaped = (step: string | number): string => String(step).replaceAll("~", "~0").replaceAll("/", "~1");

function pathsOf(value: unknown, path: JSONPath): JSONPath[] {
  if (isBlank(value)) return [path];
  if (Array.isArray(value)) return value.flatMap((entry, index) => pathsOf(entry, [...path, index]));
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([key, entry]) => pathsOf(entry, [...path, key]));
}

function lineOf(text: string, tree: Node | undefined, path: JSONPath): number {
  const node = tree === undefined ? undefined : findNodeAtLocation(tree, path);
  return text.slice(0, node?.offset ?? 0).split("\n").length;
}

/** Every blank of a record as written, in the order of the file. */
export function blanksIn(text: string): Blank[] {
  const tree = parseTree(text);
  const record: unknown = JSON.parse(text);
  return pathsOf(record, []).map((path) => {
    const held = path.reduce<unknown>((inner, step) => (inner as Record<string | number, unknown>)[step], record);
    return {
      pointer: path.map((step) => `/${escaped(step)}`).join(""),
      line: lineOf(text, tree, path),
      what: String(held).slice(FILL.length),
    };
  });
}
