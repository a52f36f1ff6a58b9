import { loadDataset } from "@underchassis/dataset/load";
import { buildModel, ODDS_NAMES, searchSuspects } from "@underchassis/grading";
import { renderSuspects, stableJson } from "@underchassis/report";
import { type Command, InvalidArgumentError, Option } from "commander";
import { closest } from "fastest-levenshtein";
import { loadJobFiles } from "../files/loadJobFiles.ts";
import { EXIT, type Terminal } from "../terminal.ts";
import { refuse } from "./refuse.ts";

const FORMATS = ["text", "json"] as const;

interface SuspectsOptions {
  format: (typeof FORMATS)[number];
  top: number;
  timeLimit?: number;
  odds?: ReadonlyMap<string, number>;
}

/** Progress is shown when a search takes longer than this, in milliseconds. */
const PATIENCE = 800;

/** Searches for the fault behind readings that are off. @returns exit code: 1 when there is a suspect */
function suspects(path: string, options: SuspectsOptions, terminal: Terminal): number {
  const files = loadJobFiles(path);
  const dataset = loadDataset();
  const built = buildModel(files, dataset);
  if (!built.ok) return refuse(built.diagnostics, files, options.format, terminal);
  const { model } = built;
  const start = performance.now();
  let shown = start;
  const report = searchSuspects(model, {
    top: options.top,
    ...(options.odds === undefined ? {} : { odds: options.odds }),
    ...(options.timeLimit === undefined ? {} : { timeLimitSeconds: options.timeLimit }),
    onProgress(done, total) {
      const now = performance.now();
      if (!terminal.colour.err || now - start < PATIENCE || now - shown < 250) return;
      shown = now;
      terminal.err(`\r${done} of ${total} faults`);
    },
  });
  if (shown !== start) terminal.err(`\r${" ".repeat(40)}\r`);
  if (options.format === "json") terminal.out(stableJson({ title: model.title, ...report }));
  else {
    const cautions = new Map([...dataset.cautions].map(([id, { text }]) => [id, text]));
    const width = terminal.columns === undefined ? {} : { width: terminal.columns };
    terminal.out(
      renderSuspects(report, { title: model.title, reference: model.reference, cautions, colour: terminal.colour.out, ...width }),
    );
  }
  return report.verdict === "suspects" || report.verdict === "none-of-these" ? EXIT.danger : EXIT.done;
}

function wholeNumber(text: string): number {
  const value = Number(text);
  if (!Number.isInteger(value) || value < 1 || value > 100)
    throw new InvalidArgumentError("expected a whole number from 1 to 100, such as 5");
  return value;
}

function secondsOf(text: string): number {
  const value = Number(text);
  if (!(value > 0 && value <= 3600)) throw new InvalidArgumentError("expected seconds from 0.1 to 3600, such as 10");
  return value;
}

/** One more of `capacitor.leaky=80`. */
function oddsOf(text: string, before: ReadonlyMap<string, number> = new Map()): ReadonlyMap<string, number> {
  const [name = "", figure = ""] = text.split("=");
  const weight = Number(figure);
  if (!ODDS_NAMES.includes(name))
    throw new InvalidArgumentError(`expected a kind of part and a fault; the nearest is ${closest(name, [...ODDS_NAMES])}`);
  if (figure === "" || !(weight >= 0 && weight <= 1000))
    throw new InvalidArgumentError(`expected a weight from 0 to 1000 on the scale of the failure notes, such as ${name}=80`);
  return new Map([...before, [name, weight]]);
}

/** Adds the arguments of `underchassis suspects`. */
export function define(command: Command, terminal: Terminal, finish: (exitCode: number) => void): void {
  command
    .argument("<job>", "folder that holds job.json, or the file itself")
    .addOption(new Option("-f, --format <format>", "how to print it").choices(FORMATS).default("text"))
    .addOption(new Option("-n, --top <count>", "most suspects to print").argParser(wholeNumber).default(5))
    .addOption(new Option("-t, --time-limit <seconds>", "stop looking after so long, and say so").argParser(secondsOf))
    .addOption(
      new Option(
        "-p, --odds <part.fault=weight>",
        "how common a fault is, instead of what the failure notes say; may be repeated",
      ).argParser(oddsOf),
    )
    .action((path: string, options: SuspectsOptions) => finish(suspects(path, options, terminal)));
}
