import { readdirSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { brokenImports, MAY_IMPORT } from "./importRules.ts";

const sourcesOf = (room: string): string[] =>
  readdirSync(`packages/${room}/src`, { recursive: true, encoding: "utf8" })
    .filter((name) => /\.tsx?$/.test(name))
    .map((name) => `packages/${room}/src/${name.replaceAll("\\", "/")}`);

test("the rules name every package", () => {
  expect(readdirSync("packages").sort()).toEqual(Object.keys(MAY_IMPORT).sort());
});

test.each(Object.keys(MAY_IMPORT))("imports of %s run only downwards", (room) => {
  const broken = sourcesOf(room).flatMap((file) => brokenImports(file, readFileSync(file, "utf8")));
  expect(broken).toEqual([]);
});

test.each(Object.keys(MAY_IMPORT))("package.json of %s asks for nothing above it", (room) => {
  const { dependencies = {} } = JSON.parse(readFileSync(`packages/${room}/package.json`, "utf8")) as { dependencies?: object };
  const ours = Object.keys(dependencies).filter((name) => name.startsWith("@underchassis/"));
  const allowed = MAY_IMPORT[room]?.map((name) => `@underchassis/${name}`) ?? [];
  expect(ours.filter((name) => !allowed.includes(name))).toEqual([]);
});

test.each([
  ["packages/calc/src/a.ts", 'import { x } from "@underchassis/dataset";'],
  ["packages/grading/src/a.ts", 'import type { x } from "@underchassis/report";'],
  ["packages/grading/src/a.ts", 'export * from "@underchassis/report";'],
  ["packages/grading/src/a.ts", 'import { x } from "@underchassis/dataset/load";'],
  ["packages/grading/src/a.ts", 'await import("node:fs");'],
  ["packages/report/src/a.tsx", 'import { readFileSync } from "fs";'],
  ["packages/report/src/a.ts", 'import { x } from "../../calc/src/index.ts";'],
  ["packages/dataset/src/a.ts", 'import { x } from "@underchassis/calc";'],
  ["packages/dataset/src/a.ts", 'import { x } from "@underchassis/grading";'],
])("catches in %s: %s", (file, source) => {
  expect(brokenImports(file, source)).toHaveLength(1);
});

test.each([
  ["packages/cli/src/a.ts", 'import { x } from "@underchassis/dataset/load"; import "node:fs";'],
  ["packages/dataset/src/load.ts", 'import "node:fs";'],
  ["packages/grading/src/deep/a.ts", 'import { x } from "../b.ts"; import { y } from "@underchassis/calc";'],
  ["packages/grading/src/deep/a.ts", 'import schema from "../../../../schemas/job.schema.json" with { type: "json" };'],
  ["packages/calc/src/a.test.ts", 'import { readFileSync } from "node:fs";'],
])("lets pass in %s: %s", (file, source) => {
  expect(brokenImports(file, source)).toEqual([]);
});
