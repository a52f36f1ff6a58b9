import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";

/** The stored report of a job's grading, by the path of its job.json; undefined where none is kept. @param root folder of the repository */
export function recordedGrades(root: string): (jobPath: string) => unknown {
  return (jobPath) => {
    if (!jobPath.startsWith("datasets/jobs/")) return undefined;
    const file = join(root, "tests/jobs/golden", `${jobPath.split("/").at(-2) ?? ""}.json`);
    return existsSync(file) ? (JSON.parse(readFileSync(file, "utf8")) as unknown) : undefined;
  };
}
