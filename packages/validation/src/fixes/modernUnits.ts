import type { StageTemplate } from "@underchassis/dataset";
import { findNodeAtLocation, parseTree } from "jsonc-parser";
import type { RecordKind } from "../model/fileKind.ts";
import { modernSpelling } from "../shared/oldSpellings.ts";
import { violationsOf } from "../shared/violationsOf.ts";
import { valuesOf } from "../shared/writtenValues.ts";

/** A template whose values are written with modern units. Records that break their schema stay as they are. @param text strict JSON */
export function withModernUnits(kind: RecordKind, text: string): string {
  if (kind !== "stage") return text;
  const value: unknown = JSON.parse(text);
  if (violationsOf(kind, value).length > 0) return text;
  const changes = valuesOf(value as StageTemplate).filter((written) => modernSpelling(written.text) !== written.text);
  if (changes.length === 0) return text;
  const root = parseTree(text);
  let result = text;
  for (const { path, text: old } of changes.toReversed()) {
    const node = root === undefined ? undefined : findNodeAtLocation(root, [...path]);
    if (node !== undefined)
      result = result.slice(0, node.offset) + JSON.stringify(modernSpelling(old)) + result.slice(node.offset + node.length);
  }
  return result;
}
