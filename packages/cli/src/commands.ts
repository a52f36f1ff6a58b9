import type { Command } from "commander";
import type { Terminal } from "./terminal.ts";

/** A subcommand's own file: adds its arguments and options, and what to do with them. */
export interface CommandModule {
  /** @param finish takes the exit code */
  define(command: Command, terminal: Terminal, finish: (exitCode: number) => void): void;
}

interface CommandEntry {
  name: string;
  summary: string;
  load(): Promise<CommandModule>;
}

/** Every subcommand. Only the one that is asked for is loaded. */
export const commands: readonly CommandEntry[] = [
  { name: "grade", summary: "grade a job: findings, clearance and what to do next", load: () => import("./commands/grade.ts") },
  {
    name: "suspects",
    summary: "search for the fault that explains readings that are off, and what to measure next",
    load: () => import("./commands/suspects.ts"),
  },
  {
    name: "circuit",
    summary: "print the network that a job compiles to, and what every point of it carries",
    load: () => import("./commands/circuit.ts"),
  },
  {
    name: "worksheet",
    summary: "print a blank bench sheet: cautions, parts to check, points to measure, in the order of work",
    load: () => import("./commands/worksheet.ts"),
  },
  {
    name: "find",
    summary: "look something up: templates, failure notes, tubes, cautions, rules, checks",
    load: () => import("./commands/find.ts"),
  },
  { name: "work", summary: "work a formula of the handbooks, with units, limits and source", load: () => import("./commands/work.ts") },
  { name: "decode", summary: "read a marking: colour bands, dots, codes, printed values", load: () => import("./commands/decode.ts") },
  { name: "substitute", summary: "what may replace an old part in its place", load: () => import("./commands/substitute.ts") },
];
