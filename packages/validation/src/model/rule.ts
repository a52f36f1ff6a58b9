import type { TubeRecord } from "@underchassis/dataset";
import type { Path } from "@underchassis/source-text";
import type { Severity } from "./diagnostic.ts";
import type { FileKind, RecordKind } from "./fileKind.ts";
import type { Collection, JobFolder, RawFile, RecordFile, TableFile, TemplateRun } from "./subjects.ts";

/** Where a rule points: a stretch of the text, or a value (or its name) in the record, or a stretch inside that value. */
export type Target =
  | { offset: number; length: number }
  | { line: number; column: number; length: number }
  | {
      path: Path;
      part?: "key" | "value" /** Stretch of the value's own text, escapes resolved. */;
      within?: { offset: number; length: number };
    };

/** What a rule says of one place; the runner adds code, severity, file and position. */
export interface Complaint {
  /** Absent: the file as a whole. */
  at?: Target;
  message: string;
  expected?: string;
  received?: string;
  help?: string;
  nearest?: string | undefined;
  /** `--fix` cannot mend this one, though it mends others of the rule. */
  byHand?: boolean;
  /** Cause before consequence: among complaints of one file the lower comes first. Default 0. */
  rank?: number;
}

/** A complaint of a rule that sees many files. */
export interface FiledComplaint extends Complaint {
  file: string;
}

/** What is true of every rule. */
export interface RuleFacts {
  /** Stable for ever, never used again: UC- and a number whose first figure is the scope. */
  code: string;
  /** The file's name. */
  name: string;
  severity: Severity;
  /** What must hold. */
  title: string;
  /** Why it matters. */
  why: string;
  /** A piece of a file that breaks the rule, and one that keeps it. */
  bad: string;
  good: string;
  /** `--fix` mends it. */
  fixable?: true;
}

/** Looks at the raw text of one file, and at its name. */
export interface BytesRule extends RuleFacts {
  scope: "bytes";
  /** Default: every file. */
  kinds?: readonly FileKind[];
  check(file: RawFile): readonly Complaint[];
}

/** Looks at one parsed record. */
export interface RecordRule extends RuleFacts {
  scope: "record";
  /** Default: every kind. */
  kinds?: readonly RecordKind[];
  /** `shape`: holds the record against its schema; the others run only where that found nothing. */
  phase?: "shape";
  check(record: RecordFile): readonly Complaint[];
}

/** Looks at one file against its name and folder: a whole table, or a record and where it lies. */
export type FileRule = RuleFacts & { scope: "file" } & (
    | { of: "record"; kinds?: readonly RecordKind[]; check(record: RecordFile): readonly Complaint[] }
    | { of: "table"; check(table: TableFile, collection: Collection): readonly Complaint[] }
  );

/** Looks across files. */
export interface CollectionRule extends RuleFacts {
  scope: "collection";
  check(collection: Collection): readonly FiledComplaint[];
}

/** Looks at what a template or tube does when it is simulated, or at a job when it is graded. */
export type ElectricalRule = RuleFacts & { scope: "electrical" } & (
    | { of: "tube"; check(tube: TubeRecord): readonly Complaint[] }
    | {
        of: "template";
        /** `sense`: whether the circuit can be simulated at all; the others run only where that found nothing. */
        phase?: "sense";
        check(run: TemplateRun): readonly Complaint[];
      }
    | {
        of: "job" /** Complaints may be of another file than the job's. */;
        check(job: JobFolder): readonly (Complaint & { file?: string })[];
      }
  );

export type Rule = BytesRule | RecordRule | FileRule | CollectionRule | ElectricalRule;
export type Scope = Rule["scope"];

/** Scopes in the order in which a contributor needs their findings. */
export const SCOPES: readonly Scope[] = ["bytes", "record", "file", "collection", "electrical"];
