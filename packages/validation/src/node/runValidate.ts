import { appendFileSync, existsSync } from "node:fs";
import { relative, resolve, sep } from "node:path";
import { parseArgs } from "node:util";
import { explainRule, nearestRule } from "../formats/explainRule.ts";
import { githubFormat, githubSummary } from "../formats/githubFormat.ts";
import { jsonFormat } from "../formats/jsonFormat.ts";
import { sarifFormat } from "../formats/sarifFormat.ts";
import { textFormat } from "../formats/textFormat.ts";
import { allRules } from "../rules/allRules.ts";
import { RULE_FAILED } from "../run/report.ts";
import { validateAll } from "../run/validateAll.ts";
import type { ValidateResult } from "../run/validateFiles.ts";
import { diskSource } from "./diskSource.ts";
import { fixFiles } from "./fixFiles.ts";
import { recordedGrades } from "./recordedGrades.ts";
import { sourcesInCode } from "./sourcesInCode.ts";

const FORMATS = ["text", "json", "github", "sarif"] as const;
type Format = (typeof FORMATS)[number];

const USAGE = [
  "usage: npm run validate -- [paths...] [--format text|json|github|sarif] [--fix] [--electrical] [--max-problems N]",
  "       npm run validate -- explain CODE",
].join("\n");

/** What the command needs of the process that it runs in. */
export interface ValidateTerminal {
  /** Folder of the repository: the one that holds datasets/. */
  root: string;
  /** Folder that paths are relative to. */
  cwd: string;
  colour: boolean;
  /** File that GitHub shows as the job's summary, if it wants one. */
  summaryFile?: string | undefined;
  out(text: string): void;
  err(text: string): void;
}

/**
 * The validate command.
 *
 * @param args - what stands behind its name
 * @returns exit code: 0 nothing found, 1 something found, 2 could not run
 */
export function runValidate(args: readonly string[], terminal: ValidateTerminal): 0 | 1 | 2 {
  try {
    const { values, positionals } = parseArgs({
      args: [...args],
      allowPositionals: true,
      options: {
        format: { type: "string", default: "text" },
        fix: { type: "boolean", default: false },
        electrical: { type: "boolean", default: false },
        "max-problems": { type: "string", default: "50" },
        help: { type: "boolean", default: false },
      },
    });
    if (values.help) return done(terminal, `${USAGE}\n`);
    if (positionals[0] === "explain") return explain(positionals[1], terminal);
    const format = values.format as Format;
    if (!FORMATS.includes(format)) return refuse(terminal, `--format takes ${FORMATS.join(", ")}, not "${values.format}"`);
    const most = Number(values["max-problems"]);
    if (!Number.isInteger(most) || most < 1)
      return refuse(terminal, `--max-problems takes a whole number from 1, not "${values["max-problems"]}"`);
    return validate(positionals, { format, most, fix: values.fix, electrical: values.electrical }, terminal);
  } catch (error) {
    return refuse(terminal, error instanceof Error ? error.message : String(error));
  }
}

interface Wanted {
  format: Format;
  most: number;
  fix: boolean;
  electrical: boolean;
}

function validate(paths: readonly string[], { format, most, fix, electrical }: Wanted, terminal: ValidateTerminal): 0 | 1 | 2 {
  const { root, cwd } = terminal;
  const wanted = paths.map((path) => ({ path, place: relative(root, resolve(cwd, path)).split(sep).join("/") }));
  for (const { path, place } of wanted) {
    if (!existsSync(resolve(cwd, path))) return refuse(terminal, `there is no ${path}`);
    if (!`${place}/`.startsWith("datasets/") && place !== "") return refuse(terminal, `${path} lies outside datasets/`);
  }
  const only = (file: string) =>
    wanted.length === 0 || wanted.some(({ place }) => place === "" || file === place || file.startsWith(`${place}/`));
  const source = diskSource(root);
  if (fix) for (const file of fixFiles(root, source, only)) terminal.err(`fixed ${file}\n`);
  const result = validateAll(source, {
    only,
    electrical,
    namedInCode: sourcesInCode(root),
    recorded: recordedGrades(root),
  });
  terminal.out(rendered(result, { format, most, electrical }, terminal, (file) => new TextDecoder().decode(source.read(file))));
  if (format === "github" && terminal.summaryFile !== undefined) appendFileSync(terminal.summaryFile, githubSummary(result));
  // A rule that failed has judged nothing: that is not a clean run, and not the contributor's fault either.
  if (result.diagnostics.some(({ code }) => code === RULE_FAILED)) return 2;
  return result.diagnostics.length === 0 ? 0 : 1;
}

function rendered(
  result: ValidateResult,
  { format, most, electrical }: Omit<Wanted, "fix">,
  { colour }: ValidateTerminal,
  read: (file: string) => string,
): string {
  switch (format) {
    case "json":
      return jsonFormat(result);
    case "github":
      return githubFormat(result);
    case "sarif":
      return sarifFormat(result, allRules);
    case "text": {
      const textOf = (file: string): string | undefined => {
        try {
          return read(file);
        } catch {
          return undefined;
        }
      };
      return textFormat(result, { textOf, most, colour, electrical });
    }
  }
}

function explain(code: string | undefined, terminal: ValidateTerminal): 0 | 2 {
  if (code === undefined) return refuse(terminal, "explain takes the code of a rule");
  const text = explainRule(allRules, code);
  if (text !== undefined) return done(terminal, text);
  const nearest = nearestRule(allRules, code);
  return refuse(terminal, `no rule has the code "${code}"${nearest === undefined ? "" : `; did you mean ${nearest}?`}`);
}

function done(terminal: ValidateTerminal, text: string): 0 {
  terminal.out(text);
  return 0;
}

function refuse(terminal: ValidateTerminal, message: string): 2 {
  terminal.err(`${message}\n${USAGE}\n`);
  return 2;
}
