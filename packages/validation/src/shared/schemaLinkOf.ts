import { type FileKind, schemaOf } from "../model/fileKind.ts";

/** What `$schema` of a record must say; undefined for kinds without a schema. */
export function schemaLinkOf(path: string, kind: FileKind): string | undefined {
  const schema = schemaOf(kind);
  return schema === undefined ? undefined : `${"../".repeat(path.split("/").length - 1)}schemas/${schema}.schema.json`;
}
