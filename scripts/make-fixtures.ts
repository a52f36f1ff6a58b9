/**
 * Makes the fixtures of the schemas in tests/fixtures anew. Sound ones come from the reference and the stored reports, cut down;
 * what no record has is written by hand in tests/fixtures/<schema>/pass/by-hand.json and is kept. Each broken one breaks one
 * required property, choice, pattern, constant, upper end or closed list; fail.csv says which, and where.
 *
 *     npx tsx scripts/make-fixtures.ts [schema...]
 */
import { spawnSync } from "node:child_process";
import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { argv, execPath } from "node:process";
import { Ajv2020 } from "ajv/dist/2020.js";
import { type BrokenInstance, breakRules } from "./fixtures/breakRules.ts";
import { FAIL_HEAD, failRow } from "./fixtures/failRow.ts";
import { schemaProperties } from "./fixtures/schemaRules.ts";
import { pick, shrink } from "./fixtures/shrink.ts";
import { sourcesOf } from "./fixtures/sourcesOf.ts";
import type { SchemaNode } from "./new/schemaNode.ts";

const FOLDER = "tests/fixtures";
const ajv = new Ajv2020({ allErrors: true, strict: false });
const names = readdirSync("schemas").map((file) => file.replace(/\.schema\.json$/, ""));

const json = (value: unknown): string => `${JSON.stringify(value, null, 2)}\n`;
const fileName = ({ rule: { keyword, id } }: BrokenInstance, index: number): string =>
  `${String(index + 1).padStart(3, "0")}-${keyword}-${id
    .replace(/^#\/(\$defs\/)?/, "")
    .replace(/\/?(properties|required|enum|pattern|const|maximum|additionalProperties)\/?/g, "-")
    .replace(/[^A-Za-z0-9]+/g, "-")
    .replace(/^-+|-+$/g, "")
    .toLowerCase()}.json`;

function makePass(name: string, schema: SchemaNode): unknown[] {
  const folder = `${FOLDER}/${name}/pass`;
  mkdirSync(folder, { recursive: true });
  for (const file of readdirSync(folder)) if (!file.startsWith("by-hand")) rmSync(`${folder}/${file}`);
  const validate = ajv.compile(schema);
  const sources = sourcesOf(name).map(({ id, value }) => ({ id, value: shrink(value, schema, validate) }));
  const byHand = readdirSync(folder).map((file) => JSON.parse(readFileSync(`${folder}/${file}`, "utf8")) as unknown);
  const all = [...sources.map(({ value }) => value), ...byHand];
  const { picked, missing } = pick(all, schema);
  for (const property of missing(schemaProperties(schema))) console.log(`${name}: nothing has ${property}`);
  for (const index of picked)
    if (index < sources.length) writeFileSync(`${folder}/${sources[index]!.id}.json`, json(sources[index]!.value));
  return [...picked.map((index) => all[index]), ...byHand];
}

function makeFail(name: string, schema: SchemaNode, instances: readonly unknown[]): Map<string, BrokenInstance> {
  const folder = `${FOLDER}/${name}/fail`;
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true });
  const { broken, unreached } = breakRules(schema, instances);
  for (const { id } of unreached) console.log(`${name}: nothing to break ${id} with`);
  const files = new Map(broken.map((instance, index) => [fileName(instance, index), instance]));
  for (const [file, { value }] of files) writeFileSync(`${folder}/${file}`, json(value));
  return files;
}

const asked = argv.slice(2);
const made = new Map<string, Map<string, BrokenInstance>>();
for (const name of names.filter((candidate) => asked.length === 0 || asked.includes(candidate))) {
  const schema = JSON.parse(readFileSync(`schemas/${name}.schema.json`, "utf8")) as SchemaNode;
  made.set(name, makeFail(name, schema, makePass(name, schema)));
}
spawnSync(execPath, [createRequire(import.meta.url).resolve("@biomejs/biome/bin/biome"), "format", "--write", FOLDER], {
  stdio: "inherit",
});
for (const [name, files] of made) {
  const rows = [...files].map(([file, instance]) => failRow(file, readFileSync(`${FOLDER}/${name}/fail/${file}`, "utf8"), instance));
  writeFileSync(`${FOLDER}/${name}/fail.csv`, `${[FAIL_HEAD, ...rows].join("\n")}\n`);
  console.log(`${name}: ${files.size} broken, ${readdirSync(`${FOLDER}/${name}/pass`).length} sound`);
}
