import { argv, cwd, env, stderr, stdout } from "node:process";
import { fileURLToPath } from "node:url";
import { runValidate } from "./node/runValidate.ts";

process.exitCode = runValidate(argv.slice(2), {
  // As far from src/ as from dist/.
  root: fileURLToPath(new URL("../../..", import.meta.url)),
  cwd: cwd(),
  colour: stdout.isTTY === true && env.NO_COLOR === undefined,
  summaryFile: env.GITHUB_STEP_SUMMARY,
  out: (text) => void stdout.write(text),
  err: (text) => void stderr.write(text),
});
