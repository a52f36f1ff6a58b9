import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { parse } from "csv-parse/sync";

const jsonFiles = (folder: string): string[] =>
  existsSync(folder)
    ? readdirSync(folder, { recursive: true, encoding: "utf8" })
        .map((name) => name.replaceAll("\\", "/"))
        .filter((name) => name.endsWith(".json"))
        .sort()
    : [];

function idsOf(file: string): string[] {
  try {
    const { id, names = [] } = JSON.parse(readFileSync(file, "utf8")) as { id?: unknown; names?: unknown[] };
    return [id, ...names].filter((name) => typeof name === "string").map((name) => name.toLowerCase());
  } catch {
    // A file that cannot be read takes the id of its name; what is wrong with it is for the validation to say.
    return [];
  }
}

/** Ids of the records below a folder of datasets, tubes also by their other names, each with its file. */
export function takenIds(root: string, folder: string): Map<string, string> {
  const top = folder.split("/")[0] ?? "";
  if (top === "jobs") {
    const jobs = join(root, "datasets/jobs");
    return new Map((existsSync(jobs) ? readdirSync(jobs) : []).map((name) => [name, `datasets/jobs/${name}`]));
  }
  const files = jsonFiles(join(root, "datasets", top)).map((name) => `datasets/${top}/${name}`);
  return new Map(
    files.flatMap((file) => [file.replace(/^.*\/|\.json$/g, ""), ...idsOf(join(root, file))].map((id) => [id, file] as const)),
  );
}

/** Ids of datasets/sources.csv. */
export function takenSources(text: string): Map<string, string> {
  const rows: Record<string, string>[] = parse(text, { columns: true, skip_empty_lines: true, trim: true });
  return new Map(rows.map(({ id = "" }) => [id, "datasets/sources.csv"]));
}
