/**
 * Compares the reference with the one at another git revision: what differs, which version bump is due, and how recorded jobs grade.
 *
 *     npm run compare -- REVISION [--format text|json|markdown]
 *
 * Exit codes: 0 the version was raised enough; 1 it was not; 2 the comparison could not be made.
 */
import process from "node:process";
import { runCompare } from "./compare/runCompare.ts";

const { exitCode, out, err } = runCompare(process.argv.slice(2), process.cwd(), process.stdout.columns);
process.stdout.write(out);
process.stderr.write(err);
process.exitCode = exitCode;
