import { DatasetError } from "@underchassis/dataset";
import { Command, CommanderError } from "commander";
import { commands } from "./commands.ts";
import { InputError } from "./inputError.ts";
import { EXIT, printable, type Terminal } from "./terminal.ts";
import { version } from "./version.ts";

const EXIT_CODES = `
Exit codes: 0 done; 1 done, with at least one finding of danger, or nothing found; 2 not done (arguments, input or internal error).
Add --format json to any command for output that a program reads.`;

const json = (value: unknown): string => `${JSON.stringify(value, null, 2)}\n`;

/** What the person asking can put right: the file where there is one, the message, the advice. */
function explainInput(error: InputError | DatasetError, asJson: boolean, terminal: Terminal): void {
  const { message } = error;
  const { file, help } = error instanceof InputError ? error : { file: undefined, help: undefined };
  if (asJson) {
    terminal.out(json({ diagnostics: [{ code: "input", severity: "error", file, message, help }], errors: 1, warnings: 0 }));
  } else {
    const lines = [file === undefined ? message : `${file}: ${message}`, ...(help === undefined ? [] : [`  ${help}`])];
    terminal.err(`${lines.map(printable).join("\n")}\n`);
  }
}

/** A fault of ours, without a stack trace. */
function explainFault(error: unknown, asJson: boolean, terminal: Terminal): void {
  const message = error instanceof Error ? error.message : String(error);
  if (asJson) terminal.out(json({ internalError: message }));
  terminal.err(
    `internal error: ${printable(message)}\n` +
      `This is a fault of underchassis ${version}, not of your job. Please open an issue with this line, the command\n` +
      "as you typed it and, if you may share it, the job folder.\n",
  );
}

const wantsJson = (args: readonly string[]): boolean =>
  args.some((argument, index) => argument === "--format=json" || (argument === "--format" && args[index + 1] === "json"));

/**
 * Runs one command line.
 *
 * @param args what stands behind the command's name
 * @returns exit code: 0, 1 or 2 (see EXIT)
 */
export async function runCli(args: readonly string[], terminal: Terminal): Promise<number> {
  let exitCode: number = EXIT.done;
  const finish = (code: number): void => {
    exitCode = code;
  };
  const program = new Command("underchassis")
    .description("Grades the restoration of vacuum-tube radio equipment against a shared reference.")
    .version(version, "-V, --version", "print the version")
    .configureOutput({ writeOut: terminal.out, writeErr: terminal.err })
    .addHelpText("after", EXIT_CODES)
    .exitOverride();

  try {
    for (const entry of commands) {
      const command = program.command(entry.name).description(entry.summary);
      const asked = args.includes(entry.name);
      if (asked) (await entry.load()).define(command, terminal, finish);
    }
    await program.parseAsync(args, { from: "user" });
    return exitCode;
  } catch (error) {
    if (error instanceof CommanderError) return error.exitCode === 0 ? EXIT.done : EXIT.failed;
    if (error instanceof InputError || error instanceof DatasetError) explainInput(error, wantsJson(args), terminal);
    else explainFault(error, wantsJson(args), terminal);
    return EXIT.failed;
  }
}
