/** Both demo jobs from files to finished reports. */
import { readdirSync, readFileSync } from "node:fs";
import { loadDataset } from "@underchassis/dataset/load";
import { renderHtml, renderJson, renderMarkdown, renderText } from "@underchassis/report";
import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import { DEMO_JOBS, goldenText, gradeDemo, readGolden } from "./demoReports.ts";

const dataset = loadDataset();
const reports = new Map(DEMO_JOBS.map((name) => [name, gradeDemo(name, dataset)]));
const report = (name: string) => reports.get(name)!;

/** How far a number may be from the stored one: what the solver's own tolerance and the stored digits leave. */
const RELATIVE = 1e-3;
/** A deviation is a small difference of two large numbers, in standard deviations. */
const DEVIATION = 0.02;

/** Where two reports differ, as paths; a version that is raised changes no grade. */
function differences(found: unknown, stored: unknown, path: string): string[] {
  if (path.endsWith(".dataset.version")) return [];
  if (typeof found === "number" && typeof stored === "number") {
    const near =
      Math.abs(found - stored) <= RELATIVE * Math.max(Math.abs(found), Math.abs(stored)) + (path.endsWith(".deviation") ? DEVIATION : 1e-9);
    return near ? [] : [`${path}: ${found}, stored ${stored}`];
  }
  if (typeof found !== "object" || typeof stored !== "object" || found === null || stored === null) {
    return found === stored ? [] : [`${path}: ${JSON.stringify(found)}, stored ${JSON.stringify(stored)}`];
  }
  const keys = new Set([...Object.keys(found), ...Object.keys(stored)]);
  return [...keys].flatMap((key) =>
    differences((found as Record<string, unknown>)[key], (stored as Record<string, unknown>)[key], `${path}.${key}`),
  );
}

describe.each(DEMO_JOBS)("%s", (name) => {
  it("reports what is stored; npm run golden stores it anew", () => {
    const stored = readGolden(name);
    expect(differences(JSON.parse(goldenText(report(name))), stored, name).slice(0, 20)).toEqual([]);
  });

  it("gives the same report again, to the byte", () => {
    expect(renderJson(gradeDemo(name, loadDataset()))).toBe(renderJson(report(name)));
  });

  it("keeps to the schema of reports", () => {
    const schema = JSON.parse(readFileSync("schemas/report.schema.json", "utf8")) as object;
    const validate = new Ajv2020({ allErrors: true, strict: false }).compile(schema);
    validate(JSON.parse(renderJson(report(name))));
    expect(validate.errors ?? []).toEqual([]);
  });

  it("names its files as they were given, nowhere by an absolute path", () => {
    expect(report(name).job.file).toBe(`datasets/jobs/${name}/job.json`);
    expect(renderJson(report(name))).not.toContain(process.cwd());
  });

  it("made every check", () => {
    expect(report(name).checks.filter(({ outcome }) => outcome === "failed")).toEqual([]);
  });

  it("has a source with its kind for every figure", () => {
    const known = new Set(report(name).sources.map(({ id }) => id));
    const named = report(name).findings.flatMap((finding) => [...finding.sources, ...finding.figures.map(({ source }) => source)]);
    expect([...new Set(named)].filter((id) => !known.has(id))).toEqual([]);
  });

  it("points with every hold at its finding, and with every caution at a text", () => {
    const { clearance, findings, cautions } = report(name);
    for (const hold of clearance.holds) expect(findings[hold.finding]?.title).toBe(hold.reason);
    expect(cautions.length).toBeGreaterThan(0);
    expect(cautions.every(({ text, because }) => text.length > 20 && Array.isArray(because))).toBe(true);
  });

  const rendered = () => ({
    text: renderText(report(name), { colour: false }),
    markdown: renderMarkdown(report(name)),
    html: renderHtml(report(name)),
    json: renderJson(report(name)),
  });

  it("is written as text, Markdown, HTML and JSON, each with its title and every finding that matters", () => {
    for (const [format, output] of Object.entries(rendered())) {
      expect(output, format).toContain(report(name).job.title);
      expect(output, format).not.toMatch(/\bNaN\b|\bundefined\b|\[object Object\]/);
      for (const { part } of report(name).findings.filter(({ severity }) => severity === "danger"))
        if (part !== undefined) expect(output, format).toContain(part);
    }
  });

  it("calls nothing safe", () => {
    for (const [format, output] of Object.entries(rendered()))
      expect(output.match(/.{0,40}\bsafe(?:ly|r|st)?\b.{0,40}/i)?.[0], format).toBeUndefined();
  });
});

describe("what the demo jobs show", () => {
  it("the receiver reaches service: no danger, every reading within its window", () => {
    const { clearance, counts, readings } = report("lantern-room-receiver");
    expect([clearance.level, counts.danger, clearance.holds]).toEqual(["service", 0, []]);
    expect(readings.length).toBeGreaterThan(10);
    expect(readings.filter(({ verdict }) => verdict !== "within")).toEqual([]);
  });

  it("the transmitter does not leave the bench, and says first why not", () => {
    const { clearance, counts, findings } = report("tide-hut-transmitter");
    expect(clearance.level).toBe("none");
    expect(counts.danger).toBeGreaterThan(3);
    expect(findings.slice(0, counts.danger).every(({ severity }) => severity === "danger")).toBe(true);
  });

  it("the transmitter's lead on the wrong lug shows in the readings of its point, and only what hangs on it is far outside", () => {
    const { readings } = report("tide-hut-transmitter");
    const far = readings.filter(({ verdict }) => verdict === "far-outside");
    const screen = readings.filter(({ at, to }) => at === "screen tap" && to === "chassis");
    expect(screen.length).toBeGreaterThanOrEqual(3);
    expect(screen.every(({ verdict }) => verdict === "far-outside")).toBe(true);
    expect(screen.every(({ measured, nominal }) => (measured ?? 0) > 1.3 * (nominal ?? Number.POSITIVE_INFINITY))).toBe(true);
    expect(far.length).toBeLessThan(readings.length / 2);
  });

  it("the transmitter's plans are judged apart: none of them holds a step", () => {
    const { clearance, findings } = report("tide-hut-transmitter");
    expect(findings.some(({ life }) => life === "planned")).toBe(true);
    expect(clearance.holds.filter(({ finding }) => findings[finding]?.life === "planned")).toEqual([]);
  });
});

it("no text of the dataset calls anything safe", () => {
  const files = readdirSync("datasets", { recursive: true, encoding: "utf8" }).filter((file) => /\.(json|csv|md)$/.test(file));
  expect(files.length).toBeGreaterThan(100);
  for (const file of files)
    expect(readFileSync(`datasets/${file}`, "utf8").match(/.{0,40}\b(?:un)?safe(?:ly|r|st)?\b.{0,40}/i)?.[0], file).toBeUndefined();
});
