import { readdirSync, readFileSync } from "node:fs";
import { expect, it } from "vitest";

const manifest = JSON.parse(readFileSync("datasets/manifest.json", "utf8")) as {
  datasetVersion: string;
  schemaVersions: Record<string, number>;
};

interface Versioned {
  properties: Record<string, { const?: number } | undefined>;
}

/** The version that a schema asks its records to state; 1 for one whose records state none. */
function versionOf(name: string): number {
  const { properties } = JSON.parse(readFileSync(`schemas/${name}.schema.json`, "utf8")) as Versioned;
  return (properties.schemaVersion ?? properties.format ?? properties.reportVersion)?.const ?? 1;
}

it("states a semantic version", () => expect(manifest.datasetVersion).toMatch(/^\d+\.\d+\.\d+$/));

it("states the version of every schema, as the schema has it", () => {
  const names = readdirSync("schemas").map((file) => file.replace(/\.schema\.json$/, ""));
  expect(manifest.schemaVersions).toEqual(Object.fromEntries(names.sort().map((name) => [name, versionOf(name)])));
});
