/**
 * Grades a job from the sources, without building first: the same as `underchassis grade`.
 *
 *     npx tsx scripts/report.ts <job> [--format text|markdown|json|html] [--out FILE]
 */
import { argv } from "node:process";
import { processTerminal } from "../packages/cli/src/processTerminal.ts";
import { runCli } from "../packages/cli/src/runCli.ts";

process.exitCode = await runCli(["grade", ...argv.slice(2)], processTerminal());
