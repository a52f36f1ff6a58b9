import { existsSync, lstatSync, mkdirSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { parseArgs } from "node:util";
import type { StageTemplate } from "@underchassis/dataset";
import { nearestOf } from "@underchassis/source-text";
import { writeWhole } from "../../packages/cli/src/files/writeWhole.ts";
import { visible } from "../../packages/report/src/clean/visible.ts";
import { format } from "../generate/format.ts";
import { type Blank, blanksIn } from "./blanksIn.ts";
import { exampleFiles } from "./exampleFiles.ts";
import { idProblem } from "./idProblem.ts";
import { KINDS, type KnownTemplate, type NewOptions, type RecordKind } from "./kinds.ts";
import type { SchemaNode } from "./schemaNode.ts";
import { skeleton } from "./skeleton.ts";
import { SOURCE_KINDS, withSource } from "./sourceRow.ts";
import { takenIds, takenSources } from "./taken.ts";

const NAMES = [...KINDS.map(({ name }) => name), "example", "source"];
const USAGE = `npm run new -- ${NAMES.join("|")} ID [--family F] [--title T] [--part-kind K] [--class C] [--source-kind K] [--detail D] [--template T]`;
const TEXT = { type: "string" } as const;

export interface Ran {
  exitCode: 0 | 2;
  out: string;
  err: string;
}

/** What was asked for cannot be begun. */
class NewError extends Error {
  override name = "NewError";
}

function choiceProblem(option: string, value: string, choices: readonly unknown[]): string {
  const near = nearestOf(value, choices.map(String));
  return `--${option} "${value}" is none of ${choices.join(", ")}${near === undefined ? "" : `; the nearest is ${near}`}`;
}

function checkChoices(kind: RecordKind, schema: SchemaNode, options: NewOptions): void {
  for (const [option, property] of Object.entries(kind.choices)) {
    const choices = schema.properties?.[property]?.enum ?? [];
    const value = options[option as keyof NewOptions];
    if (option === "family" && value === undefined)
      throw new NewError(`a stage lies in the folder of its family: --family ${choices.join("|")}`);
    if (value !== undefined && !choices.includes(value)) throw new NewError(choiceProblem(option, value, choices));
  }
}

/** What comes after the blanks, until a pull request passes. */
const NEXT = [
  "npm run validate -- --electrical   says what is wrong, and simulates",
  "npm run generate                   counts the new figures in DEVELOPERS.md",
  "npm run compare -- main            says which version is due, and whether a recorded job grades otherwise",
];

const told = (path: string, blanks: readonly Blank[], open: readonly string[]): string =>
  [
    `wrote ${path}`,
    `${blanks.length} blanks to fill in:`,
    ...blanks.map(({ pointer, line, what }) => `  ${path}:${line}  ${pointer}  ${what}`),
    ...open,
    "",
  ].join("\n");

const nextSteps = (steps: readonly string[]): string =>
  steps.map((line, index) => `${index === 0 ? "then: " : "      "}${line}\n`).join("");

function refuseTaken(root: string, path: string): void {
  if (lstatSync(join(root, path), { throwIfNoEntry: false }) !== undefined)
    throw new NewError(`${path} is there already, and is not written over`);
}

function newRecord(kind: RecordKind, id: string, options: NewOptions, root: string): string {
  const schema = JSON.parse(readFileSync(join(root, `schemas/${kind.schema}.schema.json`), "utf8")) as SchemaNode;
  checkChoices(kind, schema, options);
  const { folder, file } = kind.place(id, options);
  const problem = idProblem(id, takenIds(root, folder));
  if (problem !== undefined) throw new NewError(problem);
  const path = `datasets/${folder}/${file}`;
  refuseTaken(root, path);
  const template = options.template === undefined ? undefined : knownTemplate(root, options.template);
  const text = format(JSON.stringify(skeleton(schema, kind.plan(id, options, template)), null, 2), path);
  mkdirSync(dirname(join(root, path)), { recursive: true });
  writeWhole(join(root, path), text);
  const open = kind.name === "job" && template === undefined ? [BIND_OPEN] : [];
  return told(path, blanksIn(text), open) + nextSteps([...(kind.next?.(id, options) ?? []), ...NEXT]);
}

const BIND_OPEN = "  bind is empty: --template T lists the terminals of a stage template in it";

function knownTemplate(root: string, id: string): KnownTemplate {
  const stages = takenIds(root, "stages");
  const file = stages.get(id);
  const near = nearestOf(id, stages.keys());
  if (file === undefined) throw new NewError(`there is no stage template "${id}"${near === undefined ? "" : `; the nearest is ${near}`}`);
  return JSON.parse(readFileSync(join(root, file), "utf8")) as KnownTemplate;
}

/** The worked example of a template: its two jobs and their record. */
function newExample(id: string, root: string): string {
  const template = knownTemplate(root, id) as unknown as StageTemplate;
  const open = blanksIn(JSON.stringify(template)).length;
  if (open > 0) throw new NewError(`the template "${id}" has ${open} blanks to be filled in first`);
  const folder = `datasets/examples/${id}`;
  refuseTaken(root, folder);
  const schema = JSON.parse(readFileSync(join(root, "schemas/example.schema.json"), "utf8")) as SchemaNode;
  const files = exampleFiles(template, schema).map(({ name, record }) => {
    const path = `${folder}/${name}`;
    return { path, text: format(JSON.stringify(record, null, 2), path) };
  });
  for (const { path, text } of files) {
    mkdirSync(dirname(join(root, path)), { recursive: true });
    writeWhole(join(root, path), text);
  }
  const blanks = files.map(({ path, text }) => told(path, blanksIn(text), []));
  const steps = [
    `npx underchassis grade ${folder}/nominal   shows what a job comes to`,
    `npm run validate -- ${folder} --electrical   holds the jobs to expected.json, and names the checks and grades that they come to`,
  ];
  return blanks.join("") + nextSteps(steps);
}

function newSource(id: string, options: NewOptions, root: string): string {
  const path = "datasets/sources.csv";
  const text = readFileSync(join(root, path), "utf8");
  const problem = idProblem(id, takenSources(text));
  if (problem !== undefined) throw new NewError(problem);
  const kind = options["source-kind"];
  if (kind !== undefined && !(SOURCE_KINDS as readonly string[]).includes(kind))
    throw new NewError(choiceProblem("source-kind", kind, SOURCE_KINDS));
  const { title, detail } = options;
  const made = withSource(text, id, {
    ...(kind === undefined ? {} : { kind }),
    ...(title === undefined ? {} : { title }),
    ...(detail === undefined ? {} : { detail }),
  });
  writeWhole(join(root, path), made.text);
  const missing = [kind === undefined && "kind", title === undefined && "title", detail === undefined && "detail"].filter(Boolean);
  return `wrote ${path}\n${missing.length} blanks to fill in${missing.length === 0 ? "" : `: ${path}:${made.line}, ${missing.join(", ")}`}\nthen: npm run validate\n`;
}

function begin(args: readonly string[], root: string): string {
  const { positionals, values } = parseArgs({
    args: [...args],
    allowPositionals: true,
    options: {
      help: { type: "boolean" },
      family: TEXT,
      title: TEXT,
      "part-kind": TEXT,
      class: TEXT,
      "source-kind": TEXT,
      detail: TEXT,
      template: TEXT,
    },
  });
  if (values.help === true) return `${USAGE}\n`;
  const [name, id] = positionals;
  if (name === undefined || id === undefined || positionals.length > 2) throw new NewError(`a kind and an id are needed: ${USAGE}`);
  if (!existsSync(join(root, "datasets/manifest.json"))) throw new NewError(`no datasets/manifest.json in ${root}`);
  if (name === "source") return newSource(id, values, root);
  if (name === "example") return newExample(id, root);
  const kind = KINDS.find((candidate) => candidate.name === name);
  const near = nearestOf(name, NAMES);
  if (kind === undefined) throw new NewError(`there is no kind "${name}"${near === undefined ? "" : `; the nearest is ${near}`}: ${USAGE}`);
  return newRecord(kind, id, values, root);
}

/**
 * The whole command, without touching the process.
 *
 * @param root the repository's folder
 */
export function runNew(args: readonly string[], root: string): Ran {
  try {
    return { exitCode: 0, out: begin(args, root), err: "" };
  } catch (error) {
    const expected =
      error instanceof Error &&
      (error.name === "NewError" || error.name === "InputError" || (error as NodeJS.ErrnoException).code?.startsWith("ERR_PARSE_ARGS"));
    if (!expected) throw error;
    return { exitCode: 2, out: "", err: `${visible((error as Error).message)}\n` };
  }
}
