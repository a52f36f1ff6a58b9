/** Records that are one JSON file each. */
export type RecordKind =
  | "stage"
  | "tube"
  | "caution"
  | "failure-note"
  | "rule-of-thumb"
  | "worked-example"
  | "table-descriptions"
  | "manifest"
  | "example-record";
/** Files that are tables: the reference tables, and the list of sources. */
export type TableKind = "table" | "sources";
/** Files of a job folder: graded as a whole. */
export type JobKind = "job" | "job-parts" | "job-readings";
export type FileKind = RecordKind | TableKind | JobKind;

/** Where each kind of file lies below the repository, and the schema that it follows. */
interface KindFacts {
  kind: FileKind;
  place: RegExp;
  /** The place in words. */
  words: string;
  /** Name of the schema before `.schema.json`; none for tables and for the manifest. */
  schema?: string;
}

const ID = "[^/]+";

/** Every place that a file may have. The first that fits decides. */
export const KINDS: readonly KindFacts[] = [
  { kind: "manifest", place: /^datasets\/manifest\.json$/, words: "datasets/manifest.json" },
  { kind: "sources", place: /^datasets\/sources\.csv$/, words: "datasets/sources.csv" },
  { kind: "table-descriptions", place: /^datasets\/tables\/tables\.json$/, words: "datasets/tables/tables.json", schema: "table" },
  { kind: "table", place: new RegExp(`^datasets/tables/(${ID}/)?${ID}\\.csv$`), words: "datasets/tables/<name>.csv" },
  {
    kind: "stage",
    place: new RegExp(`^datasets/stages/${ID}/${ID}\\.json$`),
    words: "datasets/stages/<family>/<id>.json",
    schema: "stage",
  },
  { kind: "tube", place: new RegExp(`^datasets/tubes/${ID}\\.json$`), words: "datasets/tubes/<id>.json", schema: "tube" },
  { kind: "caution", place: new RegExp(`^datasets/cautions/${ID}\\.json$`), words: "datasets/cautions/<id>.json", schema: "caution" },
  {
    kind: "failure-note",
    place: new RegExp(`^datasets/failure-notes/${ID}\\.json$`),
    words: "datasets/failure-notes/<id>.json",
    schema: "failure-note",
  },
  {
    kind: "rule-of-thumb",
    place: new RegExp(`^datasets/rules-of-thumb/${ID}\\.json$`),
    words: "datasets/rules-of-thumb/<id>.json",
    schema: "rule-of-thumb",
  },
  {
    kind: "worked-example",
    place: new RegExp(`^datasets/worked-examples/${ID}\\.json$`),
    words: "datasets/worked-examples/<id>.json",
    schema: "worked-example",
  },
  {
    kind: "example-record",
    place: new RegExp(`^datasets/examples/${ID}/expected\\.json$`),
    words: "datasets/examples/<template>/expected.json",
    schema: "example",
  },
  {
    kind: "job",
    place: new RegExp(`^datasets/(jobs/${ID}|examples/${ID}/${ID})/job\\.json$`),
    words: "datasets/jobs/<name>/job.json",
    schema: "job",
  },
  {
    kind: "job-parts",
    place: new RegExp(`^datasets/(jobs/${ID}|examples/${ID}/${ID})/parts\\.csv$`),
    words: "datasets/jobs/<name>/parts.csv",
  },
  {
    kind: "job-readings",
    place: new RegExp(`^datasets/(jobs/${ID}|examples/${ID}/${ID})/readings\\.csv$`),
    words: "datasets/jobs/<name>/readings.csv",
  },
];

/** What a file must be, by its place; undefined where no file of ours lies. @param path from the repository's root, forward slashes */
export function fileKindOf(path: string): FileKind | undefined {
  return KINDS.find(({ place }) => place.test(path))?.kind;
}

/** The schema's name of a kind. */
export function schemaOf(kind: FileKind): string | undefined {
  return KINDS.find((facts) => facts.kind === kind)?.schema;
}

/** Whether a kind is a record that rules look into: parsed JSON with a schema of its own, or the manifest. */
export function isRecordKind(kind: FileKind | undefined): kind is RecordKind {
  return kind !== undefined && !isTableKind(kind) && !kind.startsWith("job");
}

export function isTableKind(kind: FileKind | undefined): kind is TableKind {
  return kind === "table" || kind === "sources";
}
