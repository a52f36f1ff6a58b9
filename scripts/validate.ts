/**
 * Holds the datasets against every rule.
 *
 *     npm run validate -- [paths...] [--format text|json|github|sarif] [--fix] [--electrical] [--max-problems N]
 *     npm run validate -- explain CODE
 *
 * Exit code: 0 nothing found, 1 something found, 2 could not run.
 */
import { argv, cwd, env, stderr, stdout } from "node:process";
import { fileURLToPath } from "node:url";
import { runValidate } from "@underchassis/validation";

process.exitCode = runValidate(argv.slice(2), {
  root: fileURLToPath(new URL("..", import.meta.url)),
  cwd: cwd(),
  colour: stdout.isTTY === true && env.NO_COLOR === undefined,
  summaryFile: env.GITHUB_STEP_SUMMARY,
  out: (text) => void stdout.write(text),
  err: (text) => void stderr.write(text),
});
