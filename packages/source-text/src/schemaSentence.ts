import { typesOf } from "./foldErrors.ts";
import { fold, nearestOf } from "./nearest.ts";
import type { Problem } from "./problems.ts";
import type { SchemaError } from "./schemaError.ts";
import { recordOf } from "./shapes.ts";
import { asWritten, oneOf } from "./words.ts";

const UNIT_SAID = /\b(?:volts?|amperes?|watts?|ohms?|farads?|henries|siemens|hertz|seconds?)\b/;
const TYPE_WORDS: Readonly<Record<string, string>> = {
  object: "an object { … }",
  array: "a list [ … ]",
  string: "a text in quotes",
  number: "a number",
  integer: "a whole number",
  boolean: "true or false",
  null: "nothing",
};

/** What the sentences need to know of the format that a schema describes. */
export interface SchemaWords {
  /** job, stage, tube: what the file is. */
  noun: string;
  /** What the schema's text patterns ask for, in words. */
  patterns: ReadonlyMap<string, string>;
  /** The choice that a text means which is spelt in another way altogether, and what to say of it. */
  choice?(written: string): { word: string; help?: string } | undefined;
}

/**
 * A schema violation as a sentence.
 *
 * @param where - the value in words: `"hertz" of "line" of "chassis"`
 * @param words - what the format calls things
 */
export function schemaSentence(error: SchemaError, where: string, words: SchemaWords): Problem {
  const { keyword, params, data, parentSchema = {} } = error;
  const received = asWritten(data);
  const schema = parentSchema as Record<string, unknown>;
  const limit = Number(params.limit);
  switch (keyword) {
    case "additionalProperties": {
      const name = String(params.additionalProperty);
      const known = Object.keys(recordOf(schema.properties)).filter((property) => property !== "$schema");
      return {
        code: "property-unknown",
        message: `${where} has no property "${asWritten(name)}"`,
        received: asWritten(name),
        expected: oneOf(known, 30),
        nearest: () => nearestOf(name, known),
      };
    }
    case "required":
      return {
        code: "property-missing",
        message: Array.isArray(params.among)
          ? `${where} has none of ${oneOf(params.among.map((name) => `"${String(name)}"`))}`
          : `${where} has no "${String(params.missingProperty)}"`,
        ...expectedOf(recordOf(recordOf(schema.properties)[String(params.missingProperty)])),
      };
    case "type":
      return {
        code: "type-wrong",
        message: `${where} is ${kindOf(data)}`,
        received,
        expected: oneOf(typesOf(error).map((type) => TYPE_WORDS[type] ?? type)),
        ...nullHelp(data),
      };
    case "enum": {
      const choices = (params.allowedValues as unknown[]).map(String);
      return {
        code: "choice-unknown",
        message: `${where} is none of the choices`,
        received,
        expected: oneOf(choices),
        nearest: () => nearestChoice(data, choices, words),
        ...choiceHelp(data, choices, words),
        ...nullHelp(data),
      };
    }
    case "const":
      return {
        code: "format-unknown",
        message: `${where} is not one that this version reads`,
        received,
        expected: String(params.allowedValue),
      };
    case "pattern": {
      const pattern = String(params.pattern);
      const name = error.propertyName ?? String(data);
      return {
        code: "name-malformed",
        message:
          error.propertyName === undefined
            ? `${where} is not written as it must be`
            : `the name "${asWritten(name)}" in ${where} is not written as it must be`,
        received: asWritten(name),
        expected: words.patterns.get(pattern) ?? `a text of the form ${pattern}`,
        nearest: () => mended(name, pattern),
      };
    }
    case "minLength":
      return {
        code: "text-empty",
        message: error.propertyName === undefined ? `${where} is empty` : `an empty name in ${where}`,
        received: '""',
        expected: "a text",
      };
    case "maxLength":
      return {
        code: "text-too-long",
        message: error.propertyName === undefined ? `${where} is too long` : `a name in ${where} is too long`,
        received: `${String(error.propertyName ?? data).length} characters`,
        expected: `at most ${limit}`,
      };
    case "minItems":
    case "maxItems":
      return {
        code: "list-length",
        message: `${where} has too ${keyword === "minItems" ? "few" : "many"} entries`,
        received: `${Array.isArray(data) ? data.length : 0}`,
        expected: lengthWords(schema),
      };
    case "minProperties":
      return {
        code: "object-empty",
        message: `${where} is empty`,
        received: "{}",
        expected: `at least ${limit} entr${limit === 1 ? "y" : "ies"}`,
      };
    case "minimum":
    case "maximum":
      return {
        code: "number-out-of-range",
        message: `${where} is out of range`,
        received,
        expected: [`${String(schema.minimum)} to ${String(schema.maximum)}`, ...wordsOf(schema)].join(", "),
        ...countHelp(data, schema),
      };
    default:
      return { code: "shape-wrong", message: `${where} ${error.message ?? `does not fit the ${words.noun} format`}`, received };
  }
}

/** What a number is, where it says its unit. */
function wordsOf({ description }: Readonly<Record<string, unknown>>): string[] {
  return typeof description === "string" && UNIT_SAID.test(description) ? [lowerFirst(description.replace(/\.$/, ""))] : [];
}

const lowerFirst = (text: string): string => text.replace(/^[A-Z](?=[a-z])/, (letter) => letter.toLowerCase());

function expectedOf(schema: Readonly<Record<string, unknown>>): { expected?: string } {
  const choices = Array.isArray(schema.enum) ? oneOf(schema.enum.map(String)) : undefined;
  if (typeof schema.description === "string") {
    const words = schema.description.replace(/\.$/, "");
    return { expected: choices === undefined ? words : `${words}: ${choices}` };
  }
  if (choices !== undefined) return { expected: choices };
  return "const" in schema ? { expected: String(schema.const) } : {};
}

/** What a number that is too large may be counted in, and how that is said. */
type Count = readonly [scale: number, words: (written: number, meant: number) => string];
const PERCENT: readonly Count[] = [[1e-2, (written, meant) => `a share, no percentage: ${written} % is ${meant}`]];
const PREFIXED: readonly Count[] = [
  [1e-3, (written, meant) => `without a prefix: ${written} thousandths are ${meant}`],
  [1e-6, (written, meant) => `without a prefix: ${written} millionths are ${meant}`],
];

/** Largest number that a share may be; what may be larger counts something else. */
const LARGEST_SHARE = 5;

/** Percent where a share is asked for, thousandths or millionths where a unit is. */
function countHelp(data: unknown, schema: Readonly<Record<string, unknown>>): { help?: string; nearest?: string } {
  const { minimum, maximum } = schema;
  if (typeof data !== "number" || typeof maximum !== "number" || maximum > LARGEST_SHARE || data <= maximum) return {};
  for (const [scale, words] of wordsOf(schema).length > 0 ? PREFIXED : PERCENT) {
    const meant = Number((data * scale).toPrecision(12));
    if (meant <= maximum && meant >= Number(minimum ?? 0)) return { help: words(data, meant), nearest: String(meant) };
  }
  return {};
}

function nearestChoice(data: unknown, choices: readonly string[], words: SchemaWords): string | undefined {
  if (typeof data === "number")
    return [...choices]
      .filter((choice) => Number.isFinite(Number(choice)))
      .sort((a, b) => Math.abs(Number(a) - data) - Math.abs(Number(b) - data))[0];
  if (typeof data !== "string") return undefined;
  const meant = words.choice?.(data)?.word;
  return meant !== undefined && choices.includes(meant) ? meant : nearestOf(data, choices);
}

const nullHelp = (data: unknown): { help?: string } => (data === null ? { help: "leave the property out where nothing is known" } : {});

function choiceHelp(data: unknown, choices: readonly string[], words: SchemaWords): { help?: string } {
  const meant = typeof data === "string" ? words.choice?.(data) : undefined;
  return meant?.help !== undefined && choices.includes(meant.word) ? { help: meant.help } : {};
}

/** A text as the pattern would have it, where that is plain. */
function mended(text: string, pattern: string): string | undefined {
  if (text.length > 64) return undefined;
  const candidates = [
    text
      .trim()
      .toLowerCase()
      .replace(/[^a-z0-9]+/g, "-")
      .replace(/^-+|-+$/g, ""),
    text
      .replace(/[^A-Za-z0-9]+(.)?/g, (_, next: string | undefined) => next?.toUpperCase() ?? "")
      .replace(/^./, (first) => first.toLowerCase()),
    text
      .replace(/[,;|]+/g, " ")
      .replace(/\s+/g, " ")
      .trim(),
  ];
  return candidates.find((candidate) => candidate !== text && fold(candidate) !== "" && new RegExp(pattern, "u").test(candidate));
}

function lengthWords({ minItems, maxItems }: Readonly<Record<string, unknown>>): string {
  if (minItems === undefined) return `at most ${String(maxItems)}`;
  if (maxItems === undefined) return `at least ${String(minItems)}`;
  return minItems === maxItems ? String(minItems) : `${String(minItems)} to ${String(maxItems)}`;
}

function kindOf(data: unknown): string {
  if (data === null) return "null";
  if (Array.isArray(data)) return "a list";
  if (typeof data === "object") return "an object";
  return typeof data === "string" ? "a text" : typeof data === "boolean" ? "true or false" : "a number";
}
