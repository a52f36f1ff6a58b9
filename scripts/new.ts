/**
 * Begins a record: the right file in the right folder, with blanks where something is to be filled in.
 *
 *     npm run new -- stage|failure|tube|caution|rule-of-thumb|job|example|source ID [--family F] [--template T] [--title T] ...
 *
 * Exit codes: 0 written; 2 not, and nothing was touched.
 */
import process from "node:process";
import { runNew } from "./new/runNew.ts";

const { exitCode, out, err } = runNew(process.argv.slice(2), process.cwd());
process.stdout.write(out);
process.stderr.write(err);
process.exitCode = exitCode;
