import type { Dataset } from "@underchassis/dataset";
import type { Diagnostic } from "../model/diagnostic.ts";
import { fileKindOf } from "../model/fileKind.ts";
import type { FileEntry, FileSource } from "../model/fileSource.ts";
import type { Grader } from "../model/grader.ts";
import type { CollectionRule, ElectricalRule, FileRule, Rule } from "../model/rule.ts";
import type { Collection, RawFile } from "../model/subjects.ts";
import { readRawFile } from "../read/readRawFile.ts";
import { Collector } from "./collector.ts";
import { electricalRun } from "./electricalRun.ts";
import { Findings } from "./findings.ts";
import { jobFiles } from "./jobFolder.ts";
import { lazyDataset } from "./lazyDataset.ts";
import { Recaller } from "./recaller.ts";
import { FILE_UNREADABLE, FileReporter, ruleFailure } from "./report.ts";
import { describeTables, rulesByScope, visitFile } from "./visitFile.ts";

export interface ValidateOptions {
  /** Files whose findings are wanted; the others are read all the same, since these may refer to them. Default: all. */
  only?: (path: string) => boolean;
  /** Also simulate every template and grade every job. Default: false. */
  electrical?: boolean;
  rules: readonly Rule[];
  /** Without it jobs are not read, and nothing can be simulated. */
  grader?: Grader;
  /** Whether code names a source. Default: none is. */
  namedInCode?: (id: string) => boolean;
  /** What was recorded of a job's grading, by its path; undefined where nothing was. */
  recorded?: (jobPath: string) => unknown;
}

export interface ValidateResult {
  /** Errors first, causes before what follows from them, then by place. */
  diagnostics: Diagnostic[];
  /** Findings beyond those kept. */
  omitted: number;
  /** Files looked at. */
  files: number;
  /** Templates simulated and jobs graded. */
  simulated: number;
}

/**
 * Holds the files of a datasets folder against rules, in one run. Files are read one after the other and let go; what is kept of them
 * are their ids and what they refer to.
 *
 * @param source - where the files lie
 */
export function validateFiles(source: FileSource, options: ValidateOptions): ValidateResult {
  const { rules, grader } = options;
  if (options.electrical === true && grader === undefined) throw new Error("electrical rules need a grader");
  const findings = new Findings(options.only ?? (() => true));
  const collector = new Collector();
  const scoped = rulesByScope(rules);
  const entries = [...source.list()];
  const read = (entry: FileEntry): RawFile | undefined => readFile(source, entry, findings);
  describeTables(entries, read, collector);
  for (const entry of entries) {
    const file = read(entry);
    if (file !== undefined) visitFile(file, scoped, collector, findings);
  }

  const recaller = new Recaller(entries, source);
  const collection = collector.collection({
    recall: recaller.recall,
    namedInCode: options.namedInCode ?? (() => false),
    jobProblems: (path) => {
      const problems =
        grader?.problemsOf(
          jobFiles(path, collection.has, (file) => recaller.text(file)),
          dataset(),
        ) ?? [];
      // What a broken record keeps a job from is told of the record; what is wrong with the job's syntax has been told.
      if (problems.some(({ received }) => received !== undefined && isUnusable(received))) return [];
      return problems.filter(({ file }) => !findings.unusable.has(file));
    },
  });
  /** Whether a job's word names a template, tube or diode that is there but cannot be used. */
  const isUnusable = (id: string): boolean =>
    (["stage", "tube"] as const).some((of) => {
      const files = collection.definitions(of).get(of === "tube" ? id.toUpperCase() : id);
      return files === undefined ? of === "tube" && collection.unknown.has(of) : files.every((file) => findings.unusable.has(file));
    });
  let known: Dataset | undefined;
  const dataset = (): Dataset => {
    known ??= lazyDataset(collection, findings.unusable);
    return known;
  };
  for (const path of [...collection.files("table"), ...collection.files("sources")])
    checkTable(path, scoped.file, collection, recaller, findings);
  for (const rule of scoped.collection) checkCollection(rule, collection, recaller, findings);
  const simulated =
    options.electrical === true && grader !== undefined
      ? runElectrical(scoped.electrical, grader, dataset(), collection, recaller, findings, options)
      : 0;
  return { diagnostics: findings.sorted(), omitted: findings.omitted, files: entries.length, simulated };
}

function readFile(source: FileSource, entry: FileEntry, findings: Findings): RawFile | undefined {
  const kind = fileKindOf(entry.path);
  // Links and strangers are reported by their names; what is far too large is not taken into memory.
  if (entry.link || kind === undefined || entry.bytes > 20_000_000) return readRawFile(entry, undefined, kind);
  try {
    return readRawFile(entry, source.read(entry.path), kind);
  } catch (error) {
    const message = `the file cannot be read: ${error instanceof Error ? error.message : String(error)}`;
    findings.add({ order: 0, diagnostic: { code: FILE_UNREADABLE, severity: "error", file: entry.path, message } });
    return undefined;
  }
}

function checkTable(path: string, rules: readonly FileRule[], collection: Collection, recaller: Recaller, findings: Findings): void {
  const { table } = recaller.recall(path);
  if (table === undefined) return;
  const reporter = new FileReporter(path, () => recaller.sourceText(path));
  for (const rule of rules) {
    if (rule.of !== "table") continue;
    try {
      for (const complaint of rule.check(table, collection)) findings.add(reporter.diagnostic(rule, complaint));
    } catch (error) {
      findings.add(ruleFailure(rule, path, error));
    }
  }
}

function checkCollection(rule: CollectionRule, collection: Collection, recaller: Recaller, findings: Findings): void {
  try {
    const reporters = new Map<string, FileReporter>();
    for (const complaint of rule.check(collection)) {
      let reporter = reporters.get(complaint.file);
      if (reporter === undefined) {
        reporter = new FileReporter(complaint.file, () => recaller.sourceText(complaint.file));
        reporters.set(complaint.file, reporter);
      }
      findings.add(reporter.diagnostic(rule, complaint));
    }
  } catch (error) {
    findings.add(ruleFailure(rule, "datasets", error));
  }
}

function runElectrical(
  rules: readonly ElectricalRule[],
  grader: Grader,
  dataset: Dataset,
  collection: Collection,
  recaller: Recaller,
  findings: Findings,
  options: ValidateOptions,
): number {
  let count = 0;
  for (const { file, circuits, checks } of electricalRun(rules, grader, dataset, collection, recaller, findings.broken, options)) {
    count += circuits;
    const reporterOf = (path: string) => new FileReporter(path, () => recaller.sourceText(path));
    const reporter = reporterOf(file);
    for (const { rule, check } of checks) {
      try {
        const complaints = check();
        for (const { file: other = file, ...complaint } of complaints)
          findings.add((other === file ? reporter : reporterOf(other)).diagnostic(rule, complaint));
        if (complaints.length > 0 && rule.of === "template" && rule.phase === "sense") break;
      } catch (error) {
        findings.add(ruleFailure(rule, file, error));
      }
    }
  }
  return count;
}
