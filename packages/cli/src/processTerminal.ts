import { env, exit, stderr, stdout } from "node:process";
import { EXIT, type Terminal } from "./terminal.ts";

/** The streams of this process. Colours only on a terminal that shows them and only where NO_COLOR is not set. */
export function processTerminal(): Terminal {
  // A reader that has seen enough (`| head`) closes the pipe; that is no error of ours.
  stdout.on("error", (error: NodeJS.ErrnoException) => {
    if (error.code === "EPIPE") exit(process.exitCode ?? EXIT.done);
    stderr.write(`the output could not be written: ${error.message}\n`);
    exit(EXIT.failed);
  });
  const mayColour = !env.NO_COLOR && env.TERM !== "dumb";
  return {
    out: (text) => stdout.write(text),
    err: (text) => stderr.write(text),
    colour: { out: mayColour && stdout.isTTY === true, err: mayColour && stderr.isTTY === true },
    columns: stdout.isTTY === true ? stdout.columns : undefined,
  };
}
