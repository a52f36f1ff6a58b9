import { allFormulas, type Formula, FormulaError } from "@underchassis/calc/formulas";
import { type Command, Option } from "commander";
import { closest } from "fastest-levenshtein";
import { EXIT, printable, type Terminal } from "../terminal.ts";
import { describeInputs, listFormulas } from "../work/describeFormula.ts";
import { readInputs } from "../work/readInputs.ts";
import { renderWork, workSheet } from "../work/renderWork.ts";

const FORMATS = ["text", "json"] as const;

interface WorkOptions {
  format: (typeof FORMATS)[number];
}

const json = (value: unknown): string => `${JSON.stringify(value, null, 2)}\n`;

/** Says why nothing was worked, and what would do. @returns exit code */
function refuse(problems: readonly string[], help: string, { format }: WorkOptions, terminal: Terminal): number {
  if (format === "json") {
    const diagnostics = problems.map((message) => ({ code: "input", severity: "error", message, help }));
    terminal.out(json({ diagnostics, errors: diagnostics.length, warnings: 0 }));
  } else {
    terminal.err(`${[...problems.map(printable), ...help.split("\n").map(printable)].join("\n")}\n`);
  }
  return EXIT.failed;
}

function list(options: WorkOptions, terminal: Terminal): number {
  const short = allFormulas.map(({ id, area, title, expression }) => ({ id, area, title, expression }));
  terminal.out(options.format === "json" ? json({ formulas: short }) : listFormulas(allFormulas));
  return EXIT.done;
}

function workOne(formula: Formula, words: readonly string[], options: WorkOptions, terminal: Terminal): number {
  const takes = `${formula.id} takes\n${describeInputs(formula)}`;
  const { values, problems } = readInputs(formula, words);
  if (problems.length > 0) return refuse(problems, takes, options, terminal);
  try {
    const results = formula.compute(values);
    terminal.out(options.format === "json" ? json(workSheet(formula, values, results)) : renderWork(formula, values, results));
    return EXIT.done;
  } catch (error) {
    if (!(error instanceof FormulaError)) throw error;
    return refuse([error.message], takes, options, terminal);
  }
}

/** Works the formula named, or lists all of them. @returns exit code */
function work(id: string | undefined, words: readonly string[], options: WorkOptions, terminal: Terminal): number {
  if (id === undefined) return list(options, terminal);
  const formula = allFormulas.find((candidate) => candidate.id === id.toLowerCase());
  if (formula) return workOne(formula, words, options, terminal);
  const ids = allFormulas.map((candidate) => candidate.id);
  const related = ids.filter((candidate) => candidate.includes(id.toLowerCase())).slice(0, 5);
  const near = related.length > 0 ? related : [closest(id.toLowerCase(), ids)];
  return refuse([`no formula "${id}"`], `nearest: ${near.join(", ")}; "underchassis work" lists them all`, options, terminal);
}

/** Adds the arguments of `underchassis work`. */
export function define(command: Command, terminal: Terminal, finish: (exitCode: number) => void): void {
  command
    .argument("[formula]", "which formula; without it, all of them are listed")
    .argument("[name=value...]", "its arguments with their units, by name or symbol: supplyVolts=250V R1=4k7")
    .addOption(new Option("-f, --format <format>", "how to print it").choices(FORMATS).default("text"))
    .action((id: string | undefined, words: readonly string[], options: WorkOptions) => finish(work(id, words, options, terminal)));
}
