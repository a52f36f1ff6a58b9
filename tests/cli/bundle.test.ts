import { spawnSync } from "node:child_process";
import { cpSync, existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { execPath } from "node:process";
import { afterAll, beforeAll, expect, test } from "vitest";

// What a person runs: the bundle behind the bin file, as `npm ci` leaves it.
const bin = "packages/cli/bin/underchassis.js";
let folder = "";

function run(script: string, ...args: string[]) {
  const { status, stdout, stderr } = spawnSync(execPath, [script, ...args], { encoding: "utf8" });
  return { status, stdout, stderr };
}

beforeAll(() => {
  if (!existsSync("packages/cli/dist/main.js")) throw new Error("packages/cli/dist is missing; run npm run build first");
  folder = mkdtempSync(join(tmpdir(), "underchassis-bundle-"));
});

afterAll(() => rmSync(folder, { recursive: true, force: true }));

test("prints the version of its package", () => {
  const { version } = JSON.parse(readFileSync("packages/cli/package.json", "utf8")) as { version: string };
  expect(run(bin, "--version")).toEqual({ status: 0, stdout: `${version}\n`, stderr: "" });
});

test("stands alone: the bundle needs nothing from node_modules", () => {
  cpSync("packages/cli/dist", join(folder, "cli", "dist"), { recursive: true });
  cpSync(bin, join(folder, "cli", "bin", "underchassis.js"));
  writeFileSync(join(folder, "cli", "package.json"), '{"type":"module"}');
  const script = join(folder, "cli", "bin", "underchassis.js");
  expect(run(script, "grade", "--help").status).toBe(0);

  rmSync(join(folder, "cli", "dist"), { recursive: true });
  const unbuilt = run(script, "--version");
  expect(unbuilt.status).toBe(2);
  expect(unbuilt.stderr).toContain("npm run build");
  expect(unbuilt.stderr.split("\n")).toHaveLength(2);
});

test("the entry is small: subcommands lie in files of their own", () => {
  const entry = readFileSync("packages/cli/dist/main.js", "utf8");
  expect(entry.length).toBeLessThan(20_000);
  expect(readdirSync("packages/cli/dist").some((name) => name.startsWith("grade-"))).toBe(true);
});

test("a job that is no JSON: exit code 2, a message that names file and line, no stack trace", () => {
  const job = join(folder, "job.json");
  writeFileSync(job, '{\n  "format": 1,\n  "title" "x"\n}\n');
  const { status, stdout, stderr } = run(bin, "grade", job);
  expect({ status, stdout }).toEqual({ status: 2, stdout: "" });
  expect(stderr).toContain(`${job}:3:`);
  expect(stderr).not.toContain("internal error");
  expect(stderr).not.toMatch(/\n\s+at /);
});
