import { expect, it } from "vitest";
import type { JobFiles } from "../job/loadedJob.ts";
import { smallDataset } from "../testing/smallDataset.ts";
import { buildModel, gradeJob } from "./gradeJob.ts";

const HEAD = '{ "format": 1, "title": "t", "chassis": { "line": { "designVolts": "117 V", "hertz": 60 } },';
const build = (rest: string, tables: Partial<JobFiles> = {}) =>
  buildModel({ job: { name: "job.json", text: `${HEAD}\n${rest} }` }, ...tables }, smallDataset());
const codes = (built: ReturnType<typeof build>) =>
  built.ok ? [] : built.diagnostics.map(({ code, file, line }) => `${file}:${line ?? 0} ${code}`);

const SUPPLY = `"parts": [
  { "name": "BT", "kind": "battery", "between": ["B+", "chassis"], "marked": "90 V" },
  { "name": "R1", "kind": "resistor", "between": ["B+", "chassis"], "marked": "10 kohm" }`;

it("tells an unknown template, an unknown point and an unreadable value in one run, in the order of the file", () => {
  const built = build(`"stages": [{ "id": "audio", "template": "no-such-template" }],
${SUPPLY},
  { "name": "R2", "kind": "resistor", "between": ["B+", "chassis"], "marked": "10 gherkins" }],
"readings": [
  { "at": "nowhere", "quantity": "dc-volts", "value": "90 V" },
  { "at": "B+", "quantity": "dc-volts", "value": "ninety" }]`);
  expect(codes(built).filter((line) => !line.includes("lonely"))).toEqual([
    "job.json:2 template-unknown",
    "job.json:6 value-unreadable",
    "job.json:8 point-unknown",
    "job.json:9 value-unreadable",
  ]);
});

it("reads no values of a job that is out of shape", () => {
  const built = build(`${SUPPLY.replace("10 kohm", "ten")}], "readings": 5`);
  expect(codes(built).map((line) => line.split(" ")[1])).not.toContain("value-unreadable");
  expect(built.ok).toBe(false);
});

it("misses no marking that a lost row of the parts table may hold", () => {
  const rest = `${SUPPLY},\n  { "name": "R2", "kind": "resistor", "between": ["B+", "chassis"] },
  { "name": "R3", "kind": "resistor", "between": ["B+", "chassis"], "marked": "1 gherkin" }]`;
  const parts = { name: "parts.csv", text: "name,kind,from,to,marked\nC1,capacitor,B+\n" };
  expect(codes(build(rest)).map((line) => line.split(" ")[1])).toEqual(["value-missing", "value-unreadable"]);
  const lost = codes(build(rest, { parts })).map((line) => line.split(" ")[1]);
  expect(lost).toContain("value-unreadable");
  expect(lost).not.toContain("value-missing");
});

const warnings = (rest: string) => {
  const built = build(rest);
  if (!built.ok) throw new Error(JSON.stringify(built.diagnostics));
  return built.warnings.filter(({ code }) => code === "source-missing").map(({ message, line, column }) => ({ message, line, column }));
};

it("warns of a job in which nothing is fed, at its line", () => {
  expect(warnings('"parts": [{ "name": "R1", "kind": "resistor", "between": ["hot", "chassis"], "marked": "10 kohm" }]')).toEqual([
    {
      message: "nothing in this job reaches the line (points line hot, line neutral) or a battery, so every voltage is computed as 0",
      line: 1,
      column: HEAD.indexOf('{ "designVolts"') + 1,
    },
  ]);
});

it("does not warn of a battery, of a part on the line, or of a job without parts", () => {
  expect(warnings(`${SUPPLY}]`)).toEqual([]);
  expect(warnings('"parts": [{ "name": "R1", "kind": "resistor", "between": ["line hot", "line neutral"], "marked": "10 kohm" }]')).toEqual(
    [],
  );
  expect(warnings('"notes": []')).toEqual([]);
});

/** A ladder of resistors from the line, or from a battery, with a capacitor at its first points. */
function ladder(points: number, capacitors: number, from = "line hot"): string {
  const parts = Array.from({ length: points }, (_, index) => [
    `{ "name": "R${index}", "kind": "resistor", "between": ["${index === 0 ? from : `p${index - 1}`}", "p${index}"], "marked": "1 kohm" }`,
    ...(index < capacitors
      ? [`{ "name": "C${index}", "kind": "capacitor", "between": ["p${index}", "chassis"], "marked": "1 uF 400 V" }`]
      : []),
    `{ "name": "Q${index}", "kind": "resistor", "between": ["p${index}", "chassis"], "marked": "1 Mohm" }`,
  ]);
  return `"parts": [${parts.flat().join(",\n")}]`;
}
const sizeOf = (rest: string) => {
  const built = build(rest);
  return built.ok
    ? []
    : built.diagnostics.filter(({ code }) => code === "network-too-large").map(({ received, expected }) => ({ received, expected }));
};

it("refuses networks that would be simulated for minutes, and says how large they are and may be", () => {
  expect(sizeOf(ladder(130, 121))).toEqual([{ received: "121 capacitors and coils", expected: expect.stringMatching(/^at most \d+$/) }]);
  // A ladder of n steps has n points of its own, and the line's two and the chassis.
  expect(sizeOf(ladder(400, 0))).toEqual([
    { received: "403 points with 0 capacitors and coils", expected: "at most 270 points with 0 capacitors and coils" },
  ]);
});

it("allows the fewer points the more capacitors there are", () => {
  expect(sizeOf(ladder(170, 60))).toEqual([
    { received: "173 points with 60 capacitors and coils", expected: expect.stringMatching(/^at most \d+ points/) },
  ]);
  expect(sizeOf(ladder(170, 5))).toEqual([]);
});

it("refuses no ladder on a battery for a size that the line would make slow", () => {
  expect(
    sizeOf(
      `${ladder(300, 0, "B+").replace('"parts": [', '"parts": [{ "name": "BT", "kind": "battery", "between": ["B+", "chassis"], "marked": "90 V" },\n')}`,
    ),
  ).toEqual([]);
});

it("takes networks of the size of a large receiver", () => {
  expect(sizeOf(ladder(60, 40))).toEqual([]);
});

it("clears no power for parts that nothing feeds: no voltage could be computed", () => {
  const graded = gradeJob(
    {
      job: {
        name: "job.json",
        text: `${HEAD} "parts": [
  { "name": "R1", "kind": "resistor", "between": ["a", "chassis"], "marked": "10k 1W", "measured": { "value": "10.1k" } },
  { "name": "R2", "kind": "resistor", "between": ["a", "chassis"], "marked": "10k 1W", "measured": { "value": "10.1k" } }] }`,
      },
    },
    smallDataset(),
    { toolVersion: "0.1.0" },
  );
  expect(graded.ok && graded.report.clearance).toMatchObject({
    level: "none",
    next: "current-limited",
    holds: [{ step: "current-limited", finding: -1, reason: expect.stringContaining("nothing in this job reaches the line") }],
  });
});
