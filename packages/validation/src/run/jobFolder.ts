import type { GradeResult, JobFiles } from "@underchassis/grading";
import { recordOf } from "@underchassis/source-text";
import type { Collection, JobFolder, Recorded } from "../model/subjects.ts";

/** The files of the job that `path` is the job.json of, as text. */
export function jobFiles(path: string, has: (path: string) => boolean, textOf: (path: string) => string): JobFiles {
  const folder = path.slice(0, path.lastIndexOf("/"));
  const file = (name: string) => (has(`${folder}/${name}`) ? { name: `${folder}/${name}`, text: textOf(`${folder}/${name}`) } : undefined);
  const [parts, readings] = [file("parts.csv"), file("readings.csv")];
  return {
    job: { name: path, text: textOf(path) },
    ...(parts === undefined ? {} : { parts }),
    ...(readings === undefined ? {} : { readings }),
  };
}

/** A job graded now, beside what was recorded of it. */
export function jobFolder(
  path: string,
  collection: Collection,
  recaller: { text(path: string): string },
  grade: (files: JobFiles) => GradeResult,
  report: unknown,
): JobFolder {
  const files = jobFiles(path, collection.has, (file) => recaller.text(file));
  return { file: path, graded: grade(files), recorded: recordedOf(path, collection, report) };
}

/** The stored report of a demo job, or its part of the expected.json beside an example. */
function recordedOf(path: string, collection: Collection, report: unknown): Recorded {
  if (report !== undefined) return { kind: "report", value: report };
  const [variant, folder] = [path.split("/").at(-2) ?? "", path.split("/").slice(0, -2).join("/")];
  const record = `${folder}/expected.json`;
  const value = collection.has(record) ? recordOf(collection.recall(record).value)[variant] : undefined;
  return value === undefined ? { kind: "none" } : { kind: "example", value, file: record, path: [variant] };
}
