import type { TableDescriptions } from "@underchassis/dataset";
import { type FileKind, isRecordKind, isTableKind, KINDS, type RecordKind } from "../model/fileKind.ts";
import type { FileEntry } from "../model/fileSource.ts";
import type { BytesRule, CollectionRule, ElectricalRule, FileRule, RecordRule, Rule } from "../model/rule.ts";
import type { RawFile, RecordFile } from "../model/subjects.ts";
import { parseRecord } from "../read/readRawFile.ts";
import { readTable } from "../read/readTable.ts";
import { violationsOf } from "../shared/violationsOf.ts";
import type { Collector } from "./collector.ts";
import type { Findings } from "./findings.ts";
import { FileReporter, ruleFailure } from "./report.ts";

/** Rules by what they look at. */
export interface ScopedRules {
  /** By kind of file; under undefined those for files that no kind knows. */
  bytes: ReadonlyMap<FileKind | undefined, readonly BytesRule[]>;
  shape: readonly RecordRule[];
  sound: ReadonlyMap<RecordKind, readonly RecordRule[]>;
  file: readonly FileRule[];
  collection: readonly CollectionRule[];
  electrical: readonly ElectricalRule[];
}

const RECORD_KINDS: readonly RecordKind[] = [
  "stage",
  "tube",
  "caution",
  "failure-note",
  "rule-of-thumb",
  "worked-example",
  "table-descriptions",
  "manifest",
  "example-record",
];

export function rulesByScope(rules: readonly Rule[]): ScopedRules {
  const of = <S extends Rule["scope"]>(scope: S) => rules.filter((rule): rule is Extract<Rule, { scope: S }> => rule.scope === scope);
  const record = of("record");
  return {
    bytes: new Map(
      [undefined, ...new Set(KINDS.map(({ kind }) => kind))].map((kind) => [
        kind,
        of("bytes").filter(({ kinds }) => kinds === undefined || (kind !== undefined && kinds.includes(kind))),
      ]),
    ),
    shape: record.filter(({ phase }) => phase === "shape"),
    sound: new Map(
      RECORD_KINDS.map((kind) => [
        kind,
        record.filter(({ phase, kinds }) => phase !== "shape" && (kinds === undefined || kinds.includes(kind))),
      ]),
    ),
    file: of("file"),
    collection: of("collection"),
    electrical: of("electrical"),
  };
}

/** Reads tables.json ahead of the tables that it describes. */
export function describeTables(entries: readonly FileEntry[], read: (entry: FileEntry) => RawFile | undefined, collector: Collector): void {
  const entry = entries.find(({ path }) => path === "datasets/tables/tables.json");
  const file = entry === undefined ? undefined : read(entry);
  if (file === undefined) return;
  parseRecord(file);
  const value = file.value?.parsed;
  if (value !== undefined && violationsOf("table-descriptions", value).length === 0) collector.describe(value as TableDescriptions);
}

/** Runs everything that can be said of one file by itself, and hands the collector what other files need. */
export function visitFile(file: RawFile, rules: ScopedRules, collector: Collector, findings: Findings): void {
  collector.see(file);
  const reporter = new FileReporter(file.path, file.source);
  const readable = file.kind !== undefined && !file.link && file.utf8 && file.text !== "";
  if (readable && file.path.endsWith(".json")) parseRecord(file);
  for (const rule of rules.bytes.get(file.kind) ?? []) attempt(rule, file);
  // Jobs are read as a whole folder, once everything that they name is known.
  if (!isTableKind(file.kind) && !isRecordKind(file.kind)) {
    if (file.path.endsWith(".json") && file.value === undefined) findings.unusable.add(file.path);
    return;
  }
  const table = readable ? readTable(file) : undefined;
  if (table !== undefined) {
    collector.table(table, file.faults().length === 0);
    return;
  }
  if (file.value === undefined || !isRecordKind(file.kind)) {
    collector.unreadable(file);
    findings.unusable.add(file.path);
    return;
  }
  const record = recordFile(file, file.kind, file.value);
  collector.record(record);
  let shapely = record.violations.length === 0;
  for (const rule of rules.shape) if (attempt(rule, record) > 0) shapely = false;
  if (!shapely) findings.unusable.add(file.path);
  if (shapely) for (const rule of rules.sound.get(record.kind) ?? []) attempt(rule, record);
  for (const rule of rules.file) {
    if (rule.of === "record" && (rule.kinds === undefined || rule.kinds.includes(record.kind))) attempt(rule, record);
  }

  function attempt<S>(
    rule: (BytesRule | RecordRule | FileRule) & { check(subject: S): ReturnType<RecordRule["check"]> },
    subject: S,
  ): number {
    try {
      const complaints = rule.check(subject);
      if (complaints.length === 0) return 0;
      for (const complaint of complaints) findings.add(reporter.diagnostic(rule, complaint));
      return complaints.length;
    } catch (error) {
      findings.add(ruleFailure(rule, file.path, error));
      return 0;
    }
  }
}

function recordFile(file: RawFile, kind: RecordKind, { parsed: value, survey }: NonNullable<RawFile["value"]>): RecordFile {
  return {
    path: file.path,
    kind,
    value,
    survey,
    text: file.text.charCodeAt(0) === 0xfeff ? file.text.slice(1) : file.text,
    violations: violationsOf(kind, value),
    memo: {},
  };
}
