import { isRecord } from "@underchassis/source-text";
import { parseTree } from "jsonc-parser";
import type { RecordKind } from "../model/fileKind.ts";
import { schemaLinkOf } from "../shared/schemaLinkOf.ts";

/** A record with `$schema` as its first property, saying what it must. @param text strict JSON */
export function withSchemaLink(path: string, kind: RecordKind, text: string): string {
  const link = schemaLinkOf(path, kind);
  const value: unknown = JSON.parse(text);
  if (link === undefined || !isRecord(value) || value.$schema === link) return text;
  const root = parseTree(text);
  const written = root?.children?.find(({ children }) => children?.[0]?.value === "$schema")?.children?.[1];
  if (written !== undefined) return text.slice(0, written.offset) + JSON.stringify(link) + text.slice(written.offset + written.length);
  const first = root?.children?.[0];
  if (root === undefined || first === undefined) return text;
  const before = text.slice(root.offset + 1, first.offset);
  return `${text.slice(0, first.offset)}"$schema": ${JSON.stringify(link)},${before === "" ? " " : before}${text.slice(first.offset)}`;
}
