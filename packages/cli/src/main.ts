import { argv } from "node:process";
import { processTerminal } from "./processTerminal.ts";
import { runCli } from "./runCli.ts";

process.exitCode = await runCli(argv.slice(2), processTerminal());
