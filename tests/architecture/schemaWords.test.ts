/** Schemas are what contributors read: every property that they write says what it is. Versions, constants and the schema's own address explain themselves. */
import { readdirSync, readFileSync } from "node:fs";
import { expect, it } from "vitest";

interface Schema {
  properties?: Record<string, Schema>;
  $defs?: Record<string, Schema>;
  items?: Schema | boolean;
  additionalProperties?: Schema | boolean;
  description?: string;
  const?: unknown;
  $ref?: string;
}

/** Paths of the properties that say nothing; one that is defined elsewhere may say it there. */
function silent(node: Schema, root: Schema, path: string): string[] {
  const own = Object.entries(node.properties ?? {}).flatMap(([name, property]) => {
    const target = property.$ref === undefined ? undefined : root.$defs?.[property.$ref.replace("#/$defs/", "")];
    const said = name === "$schema" || "const" in property || (property.description ?? target?.description) !== undefined;
    return [...(said ? [] : [`${path}/${name}`]), ...silent(property, root, `${path}/${name}`)];
  });
  const inner = [node.items, node.additionalProperties].flatMap((child) =>
    typeof child === "object" ? silent(child, root, `${path}/*`) : [],
  );
  return [...own, ...inner, ...Object.entries(node.$defs ?? {}).flatMap(([name, child]) => silent(child, root, `#${name}`))];
}

/** A report is written by the program alone. */
const WRITTEN = readdirSync("schemas").filter((file) => file !== "report.schema.json");

it.each(WRITTEN)("%s has a word on every property", (file) => {
  const schema = JSON.parse(readFileSync(`schemas/${file}`, "utf8")) as Schema;
  expect(silent(schema, schema, "")).toEqual([]);
});
