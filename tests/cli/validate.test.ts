/** The validator as contributors run it: from its bundle, wherever they stand. */
import { spawnSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { execPath } from "node:process";
import { expect, it } from "vitest";

const bin = `${process.cwd()}/packages/validation/bin/validate.js`;

function run(cwd: string, ...args: string[]) {
  const { status, stdout, stderr } = spawnSync(execPath, [bin, ...args], { cwd, encoding: "utf8", env: { ...process.env, NO_COLOR: "1" } });
  return { status, stdout, stderr };
}

it("finds nothing in one record, and simulates nothing", () => {
  expect(run(".", "datasets/cautions/one-hand-rule.json")).toMatchObject({
    status: 0,
    stdout: expect.stringMatching(/^nothing found in \d+ files; circuits not simulated/),
    stderr: "",
  });
});

it("explains a rule from anywhere", () => {
  const { status, stdout } = run(tmpdir(), "explain", "formula-name");
  expect(status).toBe(0);
  expect(stdout).toContain("UC-403");
});

it("refuses what it does not know with exit code 2", () => {
  expect(run(".", "--colour")).toMatchObject({ status: 2, stdout: "" });
  expect(run(".", "explain", "UC-999").status).toBe(2);
});

it("starts from one file", () => {
  const imports = [...readFileSync("packages/validation/dist/main.js", "utf8").matchAll(/^import .*? from "([^"]+)"/gm)].map(
    ([, from]) => from,
  );
  expect(imports.length).toBeGreaterThan(0);
  expect(
    imports.filter(
      (from) =>
        !from?.startsWith("node:") &&
        !["fs", "path", "url", "util", "stream", "buffer", "string_decoder", "events", "module"].includes(from ?? ""),
    ),
  ).toEqual([]);
});
