/** Exit codes of the built command on the demo jobs, as scripts see them. */
import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";
import { execPath } from "node:process";
import { beforeAll, expect, test } from "vitest";

const bin = "packages/cli/bin/underchassis.js";
const run = (...args: string[]) => spawnSync(execPath, [bin, ...args], { encoding: "utf8" });

beforeAll(() => {
  if (!existsSync("packages/cli/dist/main.js")) throw new Error("packages/cli/dist is missing; run npm run build first");
});

test.each([
  ["lantern-room-receiver", 0, "service"],
  ["tide-hut-transmitter", 1, "none"],
])("grade %s: exit code %d, clearance %s", (name, exitCode, level) => {
  const { status, stdout } = run("grade", `datasets/jobs/${name}`, "--format", "json");
  expect(status).toBe(exitCode);
  const report = JSON.parse(stdout) as { clearance: { level: string }; counts: { danger: number } };
  expect(report.clearance.level).toBe(level);
  expect(report.counts.danger > 0).toBe(exitCode === 1);
});

test("circuit: the network of a demo job, exit code 0", () => {
  const { status, stdout } = run("circuit", "datasets/jobs/lantern-room-receiver", "--format", "json");
  expect(status).toBe(0);
  expect((JSON.parse(stdout) as { elements: unknown[] }).elements.length).toBeGreaterThan(20);
});
