import { realpathSync, statSync } from "node:fs";
import { basename, dirname, join, resolve } from "node:path";
import type { JobFiles } from "@underchassis/grading";
import { InputError, onFile } from "../inputError.ts";

/** Names that are read as input from the folder of a job. */
const INPUTS = ["job.json", "parts.csv", "readings.csv"];

/** The file's own path, whatever links lead to it; where it does not lie yet, its place in its folder's own path. */
function ownPath(path: string): string {
  try {
    return realpathSync(path);
  } catch {
    try {
      return join(realpathSync(dirname(path)), basename(path));
    } catch {
      return resolve(path);
    }
  }
}

/**
 * Looks at where a report is to go before the work is done. Keeps it from being written over the job that it grades, or where the
 * next run would read it as part of that job.
 *
 * @param out where the report is to go
 * @throws InputError when that is one of the job's own files, or its folder is not there
 */
export function checkOut(out: string, files: JobFiles): void {
  if (out === "") throw new InputError("--out", "no name of a file", "give one: --out report.html");
  const folder = dirname(out);
  const facts = onFile(folder, () => statSync(folder, { throwIfNoEntry: false }));
  if (facts === undefined) throw new InputError(out, `there is no folder ${folder} to write into`, "make the folder first");
  const read = [files.job, files.parts, files.readings].flatMap((file) => (file === undefined ? [] : [file.name]));
  const taken = [...read, ...INPUTS.map((name) => join(dirname(files.job.name), name))].map(ownPath);
  if (!taken.includes(ownPath(out))) return;
  throw new InputError(
    out,
    "this is a file of the job itself; the report would take its place",
    "give the report another name: report.html",
  );
}
