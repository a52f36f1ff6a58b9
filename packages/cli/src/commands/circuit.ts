import { loadDataset } from "@underchassis/dataset/load";
import { buildModel, circuitSheet, LIVES, type Life } from "@underchassis/grading";
import { renderCircuit, stableJson } from "@underchassis/report";
import { type Command, Option } from "commander";
import { loadJobFiles } from "../files/loadJobFiles.ts";
import { InputError } from "../inputError.ts";
import { EXIT, type Terminal } from "../terminal.ts";
import { refuse } from "./refuse.ts";

const FORMATS = ["text", "json"] as const;

interface CircuitOptions {
  format: (typeof FORMATS)[number];
  life: Life;
  condition: string;
}

/** Prints the network that a job compiles to and its steady state. @returns exit code */
function circuit(path: string, options: CircuitOptions, terminal: Terminal): number {
  const files = loadJobFiles(path);
  const built = buildModel(files, loadDataset());
  if (!built.ok) return refuse(built.diagnostics, files, options.format, terminal);
  const condition = built.model.conditions.get(options.condition);
  if (condition === undefined || !condition.powered) {
    const powered = [...built.model.conditions.values()].filter((candidate) => candidate.powered).map(({ id }) => id);
    throw new InputError(
      path,
      `no powered condition "${options.condition}" in this job`,
      `powered conditions of this job: ${powered.join(", ")}`,
    );
  }
  const sheet = circuitSheet(built.model, options.life, options.condition);
  terminal.out(options.format === "json" ? stableJson(sheet) : renderCircuit(sheet, terminal.columns));
  return EXIT.done;
}

/** Adds the arguments of `underchassis circuit`. */
export function define(command: Command, terminal: Terminal, finish: (exitCode: number) => void): void {
  command
    .argument("<job>", "folder that holds job.json, or the file itself")
    .addOption(
      new Option("-l, --life <life>", "which chassis: as designed, as found, as restored, or with what is planned")
        .choices(LIVES)
        .default("restored"),
    )
    .option("-c, --condition <condition>", "in which powered condition", "operating")
    .addOption(new Option("-f, --format <format>", "how to print it").choices(FORMATS).default("text"))
    .action((path: string, options: CircuitOptions) => finish(circuit(path, options, terminal)));
}
