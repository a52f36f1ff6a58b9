import type { Expression, FormulaError } from "@underchassis/calc/expression";
import type { StageTemplate, TableDescriptions } from "@underchassis/dataset";
import type { Diagnostic as JobDiagnostic } from "@underchassis/grading";
import type { Cell, CsvRecord, Path, SchemaProblem, SourceText } from "@underchassis/source-text";
import type { Survey } from "../read/survey.ts";
import type { WrittenValue } from "../shared/writtenValues.ts";
import type { FileKind, RecordKind, TableKind } from "./fileKind.ts";
import type { Complaint, Target } from "./rule.ts";

/** A fault that the reader of JSON or CSV found; its code is the reader's own. */
export interface ReaderFault extends Complaint {
  code: string;
}

/** One file as text. */
export interface RawFile {
  path: string;
  /** What it must be by its place; undefined where no file of ours lies. */
  kind: FileKind | undefined;
  link: boolean;
  bytes: number;
  /** False when its bytes are no UTF-8. */
  utf8: boolean;
  /** True when every character is ASCII, as in most files: nothing to look for beyond. */
  ascii: boolean;
  /** As decoded, byte order mark included; "" when it was not read. */
  text: string;
  /** Without the byte order mark, with the starts of its lines. */
  source(): SourceText;
  /** What the close reading of its syntax found; worked out when first asked for. */
  faults(): readonly ReaderFault[];
  /** The records of a table, read when first asked for; none when its quoting cannot be followed. */
  rows(): readonly CsvRecord[];
  /** Set once it was parsed. */
  value:
    | {
        parsed: unknown;
        survey: Survey;
        /** It holds what is worth a close look: a number beyond all bounds or of many figures, a name twice. */
        odd: boolean;
      }
    | undefined;
}

/** A formula that stands in a record. Its expression is that of its shape: figures that are quantities are others than in the text. */
export interface WrittenFormula {
  text: string;
  path: Path;
  /** What it has to give. */
  wanted: "truth" | "number";
  /** For expected figures: what the meter shows. */
  quantity?: string;
  parsed:
    | { ok: true; expression: Expression; gives: "truth" | "number"; names: readonly FormulaNameParts[]; points: readonly string[] }
    | { ok: false; error: FormulaError };
}

/** A name of a formula: plain, or a role's property. */
export interface FormulaNameParts {
  name: string;
  role?: string;
  property?: string;
}

/** One parsed record. */
export interface RecordFile {
  path: string;
  kind: RecordKind;
  value: unknown;
  survey: Survey;
  /** Without the byte order mark. */
  text: string;
  /** Where it breaks its schema. */
  violations: readonly SchemaProblem[];
  /** Worked out when a rule first asks for it. */
  memo: { formulas?: readonly WrittenFormula[]; values?: readonly WrittenValue[] };
}

/** One parsed table. Cells know their place. */
export interface TableFile {
  path: string;
  kind: TableKind;
  text: string;
  header: readonly Cell[];
  rows: readonly TableRowCells[];
}

export interface TableRowCells {
  cells: readonly Cell[];
  start: number;
  end: number;
}

/** A kind of thing that records refer to by id. */
export type ReferenceKind = "stage" | "source" | "caution" | "failure-note" | "tube" | "role" | "formula";

/** A reference as it stands in a record or table. */
export interface Reference {
  kind: ReferenceKind;
  id: string;
  at: Target;
}

/** What is kept of all files once they have been looked at. Ids and references only; files are read again where something is wrong. */
export interface Collection {
  /** Every file of a kind, by path. */
  files(kind: FileKind): readonly string[];
  /** Whether a path is there. */
  has(path: string): boolean;
  /** The files that describe an id. Tubes stand under every one of their names, in capitals. */
  definitions(kind: ReferenceKind | "worked-example" | "rule-of-thumb"): ReadonlyMap<string, readonly string[]>;
  /** The files that refer to an id. */
  references(kind: ReferenceKind): ReadonlyMap<string, readonly string[]>;
  /** True when some file could not be read far enough to know what it refers to. */
  incomplete: boolean;
  /** Kinds of things of which some may be defined where nothing can be made out: whether one of them exists cannot be said. */
  unknown: ReadonlySet<ReferenceKind | "worked-example" | "rule-of-thumb">;
  /** What tables.json says; undefined when it cannot be used. */
  descriptions: TableDescriptions | undefined;
  /** Whether code, not data, names a source: defaults of the engine, decoders of markings. */
  namedInCode(id: string): boolean;
  /** What keeps a job from being read. @param path its job.json */
  jobProblems(path: string): readonly JobDiagnostic[];
  /** Reads a file again for the places of what is wrong in it. */
  recall(path: string): {
    references: readonly Reference[];
    ids: readonly { id: string; at: Target }[];
    table?: TableFile;
    value?: unknown;
  };
}

/** A template simulated with its typical surroundings. */
export interface TemplateRun {
  file: string;
  template: StageTemplate;
  /** With and without the optional parts. */
  variants: readonly TemplateVariant[];
}

export interface TemplateVariant {
  optional: boolean;
  built: ReturnType<typeof import("@underchassis/grading").buildModel>;
}

/** A job with what was recorded of its grading. */
export interface JobFolder {
  file: string;
  /** The job as graded now. */
  graded: ReturnType<typeof import("@underchassis/grading").gradeJob>;
  recorded: Recorded;
}

/** What a job must come to: a whole stored report, or what an example's expected.json says of it. */
export type Recorded =
  | { kind: "report"; value: unknown }
  | { kind: "example"; value: unknown /** The expected.json. */; file: string /** Where in it. */; path: Path }
  | { kind: "none" };
