import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { compile, type JSONSchema } from "json-schema-to-typescript";
import { banner, format } from "./format.ts";
import { prepareSchema } from "./prepareSchema.ts";
import type { GeneratedFile } from "./settle.ts";

const schemaFolder = "schemas";
const ending = ".schema.json";

/** Where the generated types lie. */
export const typeFolder = "packages/dataset/src/generated";

/** The type generator says of every definition where it comes from; the names say it already. */
const withoutProvenance = (source: string): string =>
  source
    .replace(/^ \* This interface was referenced by .*\n \* via the .*\n/gm, "")
    .replace(/(?:^ \* *\n)+(?= \*\/)/gm, "")
    .replace(/^\/\*\*\n \*\/\n/gm, "");

async function typesOf(name: string): Promise<GeneratedFile> {
  const schema = JSON.parse(readFileSync(join(schemaFolder, name + ending), "utf8")) as Record<string, unknown>;
  const source = await compile(prepareSchema(schema) as JSONSchema, name, {
    bannerComment: banner(`${schemaFolder}/${name}${ending}`),
    format: false,
    unreachableDefinitions: true,
  });
  const path = `${typeFolder}/${name}.ts`;
  return { path, text: format(withoutProvenance(source), path) };
}

/** The TypeScript types of every record kind, one file a schema, and the index over them. */
export async function typeFiles(): Promise<GeneratedFile[]> {
  const names = readdirSync(schemaFolder)
    .filter((name) => name.endsWith(ending))
    .map((name) => name.slice(0, -ending.length))
    .sort();
  const path = `${typeFolder}/index.ts`;
  const exports = names.map((name) => `export type * from "./${name}.ts";`);
  const index = { path, text: format(`${banner(`${schemaFolder}/`)}\n\n${exports.join("\n")}\n`, path) };
  return [...(await Promise.all(names.map(typesOf))), index];
}
