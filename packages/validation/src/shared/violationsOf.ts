import {
  type PathVocabulary,
  pathWords,
  type SchemaError,
  type SchemaProblem,
  type SchemaWords,
  schemaProblems,
} from "@underchassis/source-text";
import { validate as validateCaution } from "../generated/validateCaution.js";
import { validate as validateExample } from "../generated/validateExample.js";
import { validate as validateFailureNote } from "../generated/validateFailureNote.js";
import { validate as validateRuleOfThumb } from "../generated/validateRuleOfThumb.js";
import { validate as validateStage } from "../generated/validateStage.js";
import { validate as validateTable } from "../generated/validateTable.js";
import { validate as validateTube } from "../generated/validateTube.js";
import { validate as validateWorkedExample } from "../generated/validateWorkedExample.js";
import type { RecordKind } from "../model/fileKind.ts";
import { choiceOf } from "./tradeWords.ts";

const VALIDATORS: Readonly<Partial<Record<RecordKind, typeof validateStage>>> = {
  stage: validateStage,
  tube: validateTube,
  caution: validateCaution,
  "failure-note": validateFailureNote,
  "rule-of-thumb": validateRuleOfThumb,
  "worked-example": validateWorkedExample,
  "table-descriptions": validateTable,
  "example-record": validateExample,
};

const NOUNS: Readonly<Record<RecordKind, string>> = {
  stage: "stage template",
  tube: "tube record",
  caution: "caution",
  "failure-note": "failure note",
  "rule-of-thumb": "rule of thumb",
  "worked-example": "file of worked examples",
  "table-descriptions": "description of tables",
  manifest: "manifest",
  "example-record": "record of an example",
};

const MEMBERS: PathVocabulary["members"] = {
  terminals: "terminal",
  parts: "part",
  points: "point",
  windings: "winding",
  settings: "setting",
  requirements: "requirement",
  expected: "expected figure",
  units: "unit",
  examples: "example",
  finds: "finding",
  tables: "table",
  columns: "column",
  figures: "figure",
  schools: "school",
};

/** What the patterns of the schemas ask for. */
const PATTERNS: SchemaWords["patterns"] = new Map([
  ["^[a-z0-9][a-z0-9-]*$", "small letters, digits and hyphens, a letter or digit first"],
  ["^[a-z][A-Za-z0-9]*$", "letters and digits written together, a small letter first: standbyBypass"],
  ["^([a-z0-9-]+/)?[a-z0-9-]+\\.csv$", "a path below datasets/tables: markings/mica-rma.csv"],
  ["^https://", "an address that begins with https://"],
  ["^-?[0-9]+(\\.[0-9]+)?(e-?[0-9]+)?$", "a plain number in quotes"],
  ["^-?[0-9]+(\\.[0-9]+)?$", "a plain number in quotes, without an exponent"],
]);

const choice = (written: string): { word: string } | undefined => {
  const word = choiceOf(written);
  return word === undefined ? undefined : { word };
};

/** Where a record breaks its schema, each fault once and in words; nothing for kinds without a schema. */
export function violationsOf(kind: RecordKind, value: unknown): readonly SchemaProblem[] {
  const validate = VALIDATORS[kind];
  if (validate === undefined || validate(value)) return [];
  const noun = NOUNS[kind];
  const vocabulary = { top: `the ${noun}`, members: MEMBERS };
  return schemaProblems(value, (validate.errors ?? []) as SchemaError[], { noun, patterns: PATTERNS, choice }, (path) =>
    pathWords(path, value, vocabulary),
  );
}
