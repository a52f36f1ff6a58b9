/**
 * The worked examples of the stage templates: of each, a job in which nothing is wrong and one with a fault of its own.
 * `expected.json` beside them says what the grader must come to, and is held both ways.
 */
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import type { Report } from "@underchassis/dataset";
import { loadDataset } from "@underchassis/dataset/load";
import { gradeJob, type JobFiles } from "@underchassis/grading";
import { beforeAll, describe, expect, it } from "vitest";

type Finding = Report["findings"][number];

interface Find {
  check: string;
  /** Name of the part, the point or the stage that the finding is about. */
  part: string;
  severity: Finding["severity"];
  /** Words of the finding's title, where a check finds more than one thing. */
  title?: string;
}

interface Expected {
  nominal: { clearance: Report["clearance"]["level"]; worst: "good" | "watch" };
  fault: { finds: Find[] };
}

const dataset = loadDataset();
const root = fileURLToPath(new URL("../../datasets/examples", import.meta.url));
const examples = readdirSync(root, { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .map(({ name }) => name)
  .sort();

/** Gravest first; what could not be measured is neither good nor bad. */
const GRAVITY: readonly Finding["severity"][] = ["danger", "replace", "adjust", "watch", "good"];

function graded(folder: string): Report {
  const file = (name: string) => ({ name, text: readFileSync(join(folder, name), "utf8") });
  const files: JobFiles = {
    job: file("job.json"),
    ...(existsSync(join(folder, "parts.csv")) ? { parts: file("parts.csv") } : {}),
    ...(existsSync(join(folder, "readings.csv")) ? { readings: file("readings.csv") } : {}),
  };
  const result = gradeJob(files, dataset, { toolVersion: "0.0.0" });
  if (!result.ok) throw new Error(result.diagnostics.map(({ line, message }) => `${folder}:${line}: ${message}`).join("\n"));
  return result.report;
}

const worstOf = ({ findings }: Report): Finding["severity"] =>
  GRAVITY.find((severity) => findings.some((finding) => finding.severity === severity)) ?? "good";

const isFound = (report: Report, { check, part, severity, title }: Find): boolean =>
  report.findings.some(
    (finding) =>
      finding.check === check &&
      finding.severity === severity &&
      [finding.part, finding.point, finding.stage].includes(part) &&
      (title === undefined || finding.title.includes(title)),
  );

it("there are examples", () => {
  expect(examples.length).toBeGreaterThan(0);
});

it("every folder of examples is named for a template", () => {
  expect(examples.filter((name) => !dataset.stages.has(name))).toEqual([]);
});

describe.each(examples)("%s", (name) => {
  const folder = join(root, name);
  let expected: Expected;
  let nominal: Report;
  let fault: Report;

  beforeAll(() => {
    expected = JSON.parse(readFileSync(join(folder, "expected.json"), "utf8")) as Expected;
    nominal = graded(join(folder, "nominal"));
    fault = graded(join(folder, "fault"));
  });

  it("is about its own template", () => {
    for (const report of [nominal, fault]) expect(report.stages.map(({ template }) => template)).toContain(name);
  });

  it("finds nothing worse than stated where nothing is wrong", () => {
    expect({ clearance: nominal.clearance.level, worst: worstOf(nominal) }).toEqual(expected.nominal);
    expect(["good", "watch"]).toContain(expected.nominal.worst);
  });

  it("has readings that agree where nothing is wrong", () => {
    const strays = nominal.readings.filter(({ verdict }) => verdict !== "within").map(({ at, verdict }) => `${at} ${verdict}`);
    expect(nominal.readings.length).toBeGreaterThan(0);
    expect(strays).toEqual([]);
  });

  it("finds what is wrong, and only where it is wrong", () => {
    const { finds } = expected.fault;
    expect(finds.length).toBeGreaterThan(0);
    expect(finds.filter((find) => !isFound(fault, find))).toEqual([]);
    expect(finds.filter((find) => isFound(nominal, find))).toEqual([]);
  });

  it("puts a finding of the fault first", () => {
    const [first] = fault.findings.filter(({ severity }) => severity !== "unmeasured");
    const named = expected.fault.finds.some((find) => first !== undefined && isFound({ ...fault, findings: [first] }, find));
    expect(named ? "expected" : `${first?.severity} ${first?.check}: ${first?.title}`).toBe("expected");
  });
});
