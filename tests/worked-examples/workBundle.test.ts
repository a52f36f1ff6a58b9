import { spawnSync } from "node:child_process";
import { readdirSync, readFileSync } from "node:fs";
import { execPath } from "node:process";
import { expect, test } from "vitest";

const dist = "packages/cli/dist";

/** A bundle file and all that it imports before it runs. */
function loadedWith(name: string, seen = new Set<string>()): Set<string> {
  if (seen.has(name)) return seen;
  seen.add(name);
  const source = readFileSync(`${dist}/${name}`, "utf8");
  for (const [, next = ""] of source.matchAll(/^(?:import|export)\b[^;]*?"\.\/([^"]+)";/gm)) loadedWith(next, seen);
  return seen;
}

// What it takes to start decides how fast it starts, and does not hang on how busy the machine is.
test("working a formula loads neither the checks, nor the datasets, nor an expression parser", () => {
  const entry = readdirSync(dist).find((name) => /^work-\w+\.js$/.test(name));
  expect(entry).toBeDefined();
  const files = [...loadedWith(entry ?? ""), ...loadedWith("main.js")];
  const source = [...new Set(files)].map((name) => readFileSync(`${dist}/${name}`, "utf8")).join("\n");
  expect(source).not.toMatch(/node_modules\/(mathjs|ajv|csv-parse|preact)\//);
  expect(source.length).toBeLessThan(500_000);
});

test("the command works a formula as people run it", () => {
  const { status, stdout } = spawnSync(execPath, ["packages/cli/bin/underchassis.js", "work", "series-resistance", "R1=4k7", "R2=300"], {
    encoding: "utf8",
  });
  expect({ status, shown: stdout.includes("R  5 kohm  resistance of the chain") }).toEqual({ status: 0, shown: true });
});
