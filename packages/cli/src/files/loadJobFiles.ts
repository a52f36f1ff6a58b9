import { existsSync, lstatSync, readdirSync, statSync } from "node:fs";
import { basename, dirname, join } from "node:path";
import type { JobFiles } from "@underchassis/grading";
import { closest, distance } from "fastest-levenshtein";
import { InputError, onFile } from "../inputError.ts";
import { readTextFile } from "./readTextFile.ts";

const MAIN = "job.json";
const BESIDE = ["parts", "readings"] as const;

function namesIn(folder: string): string[] {
  try {
    return readdirSync(folder);
  } catch {
    return [];
  }
}

/** Advice for a path that leads nowhere: the name beside it that is spelt most alike. */
function nearestTo(path: string): string | undefined {
  const name = basename(path);
  const candidates = namesIn(dirname(path));
  if (candidates.length === 0) return undefined;
  const nearest = closest(name, candidates);
  return distance(name, nearest) <= Math.max(2, name.length / 3) ? `the nearest name there is ${join(dirname(path), nearest)}` : undefined;
}

/** Whether something lies there, be it only a link that leads nowhere. */
const lies = (path: string): boolean => lstatSync(path, { throwIfNoEntry: false }) !== undefined;

/** Advice for a folder without job.json: a job one folder deeper, or else the JSON file named most alike. */
function nearestIn(folder: string): string {
  const names = namesIn(folder);
  const deeper = names.find((name) => existsSync(join(folder, name, MAIN)));
  if (deeper !== undefined) return `the nearest is ${join(folder, deeper, MAIN)}`;
  const jsonFiles = names.filter((name) => name.toLowerCase().endsWith(".json"));
  return jsonFiles.length === 0 ? "a job folder holds a file called job.json" : `the nearest is ${join(folder, closest(MAIN, jsonFiles))}`;
}

function mainFileOf(path: string): string {
  if (path === "") throw new InputError("job", "no path given", "give the folder that holds job.json, or the file itself");
  const facts = onFile(path, () => statSync(path, { throwIfNoEntry: false }));
  if (facts === undefined) throw new InputError(path, "no such file or folder", nearestTo(path));
  if (!facts.isDirectory()) return path;
  const main = join(path, MAIN);
  if (!lies(main)) throw new InputError(path, `no ${MAIN} in this folder`, nearestIn(path));
  return main;
}

/**
 * The table beside a job. A whole list must not be passed over without a word, so a name that differs only in capitals, or a link
 * that leads nowhere, is refused and not ignored.
 */
function tableBeside(folder: string, name: string): string | undefined {
  const table = join(folder, name);
  if (lies(table)) return table;
  const alike = namesIn(folder).find((other) => other.toLowerCase() === name);
  if (alike === undefined) return undefined;
  throw new InputError(join(folder, alike), `this table would not be read under this name`, `name it ${name}, in small letters`);
}

const read = (path: string): { name: string; text: string } => ({ name: path, text: readTextFile(path) });

/**
 * Reads the files of a job. Each goes by its path as given, so that messages lead there.
 *
 * @param path a folder that holds job.json, or a JSON file. parts.csv and readings.csv beside it are read when it is called
 *   job.json; a JSON file of another name is a whole job by itself
 * @throws InputError naming the file and what would work
 */
export function loadJobFiles(path: string): JobFiles {
  const main = mainFileOf(path);
  const files: JobFiles = { job: read(main) };
  if (basename(main) !== MAIN) return files;
  for (const kind of BESIDE) {
    const table = tableBeside(dirname(main), `${kind}.csv`);
    if (table !== undefined) files[kind] = read(table);
  }
  return files;
}
