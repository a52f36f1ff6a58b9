import type { Dataset, Report } from "@underchassis/dataset";
import { allChecks } from "../checks/allChecks.ts";
import { clearanceOf } from "../clearance/clearance.ts";
import { MEANINGS } from "../clearance/meanings.ts";
import type { JobFiles, LoadedJob } from "../job/loadedJob.ts";
import { loadJob } from "../job/loadJob.ts";
import { orderDiagnostics } from "../job/orderDiagnostics.ts";
import { type ChassisModel, CLEARANCES, type Diagnostic, SEVERITIES } from "../model/index.ts";
import { resolveJob } from "../resolve/resolveJob.ts";
import { networkTooLarge } from "../simulate/networkTooLarge.ts";
import { simulationFaults } from "../simulate/simulationFaults.ts";
import { chassisModel } from "../simulate/simulator.ts";
import { sourcelessWarnings } from "../simulate/sourceless.ts";
import { type SearchOptions, searchSuspects } from "../suspects/searchSuspects.ts";
import { cautionLines } from "./cautionLines.ts";
import { changeLines } from "./changeLines.ts";
import { expectedLines } from "./expectedLines.ts";
import { nextSteps } from "./nextSteps.ts";
import { orderLines } from "./orderLines.ts";
import { readingLines } from "./readingLines.ts";
import { type CheckRun, runChecks, sortFindings, withoutEchoes } from "./runChecks.ts";
import { sourceLines } from "./sourceLines.ts";
import { stageLines } from "./stageLines.ts";
import { versionStep } from "./versionStep.ts";

export interface GradeOptions {
  /** Version of the tool, for the record. */
  toolVersion: string;
  /** Also search for the fault behind readings that are off. */
  suspects?: SearchOptions;
}

export type GradeResult = { ok: true; report: Report } | { ok: false; diagnostics: Diagnostic[] };

/**
 * Grades one job: files in, report out. The same files and dataset give the same report, to the byte.
 *
 * @param files the job as text: job.json, and the tables beside it
 * @returns the report, or every problem that keeps the job from being read or simulated
 */
export function gradeJob(files: JobFiles, dataset: Dataset, options: GradeOptions): GradeResult {
  const built = buildModel(files, dataset);
  if (!built.ok) return built;
  const report = reportOf(built.model, built.warnings, built.notes, options.toolVersion, built.writtenFor);
  if (options.suspects === undefined) return { ok: true, report };
  return {
    ok: true,
    report: { ...report, suspects: searchSuspects(built.model, options.suspects) as unknown as NonNullable<Report["suspects"]> },
  };
}

type Built =
  | { ok: true; model: ChassisModel; warnings: Diagnostic[]; notes: readonly string[]; writtenFor: string | undefined }
  | { ok: false; diagnostics: Diagnostic[] };

/** Reads, resolves and compiles a job into a chassis model that can be simulated. */
export function buildModel(files: JobFiles, dataset: Dataset): Built {
  const loaded = loadJob(files, dataset);
  if (!loaded.ok) return { ok: false, diagnostics: withValueProblems(files, loaded.diagnostics, loaded.job, dataset) };
  const resolved = resolveJob(loaded.job, dataset);
  if (!resolved.ok) return { ok: false, diagnostics: orderDiagnostics(loaded.warnings, resolved.diagnostics) };
  const model = chassisModel(resolved.data);
  const tooLarge = networkTooLarge(model);
  const faults = tooLarge === undefined ? simulationFaults(model) : [tooLarge];
  if (faults.length > 0) return { ok: false, diagnostics: orderDiagnostics(loaded.warnings, faults) };
  const warnings = orderDiagnostics(loaded.warnings, sourcelessWarnings(model, loaded.job.locate(["chassis", "line"])));
  return { ok: true, model, warnings, notes: loaded.job.job.notes ?? [], writtenFor: loaded.job.job.datasetVersion };
}

/** What the reader found, and beside it the values that cannot be read, where the job is in shape. */
function withValueProblems(files: JobFiles, found: readonly Diagnostic[], job: LoadedJob | undefined, dataset: Dataset): Diagnostic[] {
  if (job === undefined || found.some(({ code }) => code === "problems-omitted")) return [...found];
  const resolved = resolveJob(job, dataset);
  if (resolved.ok) return [...found];
  // A row of the parts table that was lost may hold what seems to be missing.
  const rowsLost = found.some(({ severity, file }) => severity === "error" && file === files.parts?.name);
  return orderDiagnostics(
    found,
    resolved.diagnostics.filter(({ code }) => !(rowsLost && code === "value-missing")),
  );
}

function reportOf(
  model: ChassisModel,
  warnings: readonly Diagnostic[],
  notes: readonly string[],
  version: string,
  writtenFor: string | undefined,
): Report {
  const runs = runChecks(model, allChecks);
  const findings = sortFindings(withoutEchoes(runs.flatMap((run) => run.findings)));
  const failed = runs.filter((run) => run.failure !== undefined);
  const clearance = clearanceOf(findings, [
    ...warnings
      .filter(({ code }) => code === "source-missing")
      .map(({ message }) => ({ step: "current-limited" as const, reason: message })),
    ...failed.map((run) => ({ step: "service" as const, reason: `${run.check.title}: the check could not be run` })),
  ]);
  const next = nextSteps(model, findings, clearance);
  const cautions = cautionLines(model, findings, next);
  return {
    reportVersion: 1,
    tool: { name: "underchassis", version },
    dataset: datasetLine(model.dataset.version, writtenFor),
    job: {
      title: model.title,
      file: model.file,
      ...(model.description === "" ? {} : { description: model.description }),
      ...(model.era === undefined ? {} : { era: model.era }),
      assembly: model.assembly,
      isolation: model.isolation,
      line: {
        designVolts: model.line.designVolts,
        actualVolts: model.line.actualVolts,
        lowVolts: model.line.lowVolts,
        highVolts: model.line.highVolts,
        hertz: model.line.hertz,
      },
      partCount: model.parts.size,
      stageCount: model.stages.length,
      readingCount: model.readings.length,
      ...(notes.length === 0 ? {} : { notes: [...notes] }),
    },
    cautions: cautions as Report["cautions"],
    clearance: {
      level: clearance.level,
      ...(clearance.next === undefined ? {} : { next: clearance.next }),
      meaning: MEANINGS[clearance.level],
      holds: clearance.holds,
      notMade: [...failed.map((run) => `${run.check.title}: ${run.failure}`), ...unmade(findings)],
      steps: CLEARANCES.map((level) => ({
        level,
        reached: CLEARANCES.indexOf(level) <= CLEARANCES.indexOf(clearance.level),
        text: MEANINGS[level],
      })),
    },
    counts: Object.fromEntries(
      SEVERITIES.map((severity) => [severity, findings.filter((finding) => finding.severity === severity).length]),
    ) as unknown as Report["counts"],
    findings: findings as unknown as Report["findings"],
    stages: stageLines(model, findings),
    readings: readingLines(model),
    expected: expectedLines(model),
    changes: changeLines(model),
    order: orderLines(findings),
    next,
    checks: runs.map(checkLine),
    sources: sourceLines(
      model,
      findings,
      cautions.map(({ id }) => id),
    ),
    warnings: [...warnings.map(warningLine), ...merged(model)],
  };
}

function datasetLine(version: string, writtenFor: string | undefined): Report["dataset"] {
  if (writtenFor === undefined) return { version };
  const step = versionStep(writtenFor, version);
  return { version, jobWrittenFor: writtenFor, ...(step === undefined ? {} : { step }) };
}

function warningLine({ message, file, line, column }: Diagnostic): Report["warnings"][number] {
  return { message, file, ...(line === undefined ? {} : { line }), ...(column === undefined ? {} : { column }) };
}

/** Parts whose leads a wire, or a part that is not there, joins: they do nothing, and perhaps nobody meant that. */
function merged(model: ChassisModel): Report["warnings"] {
  const { shorted } = model.compile({ life: "restored", condition: "operating", line: "actual" });
  return shorted.map(({ part, point }) => {
    const location = model.parts.get(part)?.location;
    return {
      message: `both leads of ${part} lie on ${point}, so it has no effect: check what joins them`,
      ...(location ?? { file: model.file }),
    };
  });
}

/** Checks that could not be made for want of a measurement, one line each. */
function unmade(findings: readonly { severity: string; title: string }[]): string[] {
  if (findings.length === 0) return ["Nothing in this job gave any check something to look at"];
  return [...new Set(findings.filter((finding) => finding.severity === "unmeasured").map((finding) => finding.title))];
}

function checkLine(run: CheckRun): Report["checks"][number] {
  const worst = SEVERITIES.find((severity) => run.findings.some((finding) => finding.severity === severity));
  return {
    id: run.check.id,
    title: run.check.title,
    area: run.check.area,
    outcome: run.failure !== undefined ? "failed" : (worst ?? "not-applicable"),
    ...(run.failure === undefined ? {} : { note: run.failure }),
    findings: run.findings.length,
  };
}
