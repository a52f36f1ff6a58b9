import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { dirname } from "node:path";

/** A file that some script makes: where it lies from the repository's root, and its whole text. */
export interface GeneratedFile {
  path: string;
  text: string;
}

/**
 * Brings generated files up to date, or says which are not.
 *
 * @param files what should stand
 * @param folder folder that holds nothing but these files; others found there are stale. `undefined`: no such folder
 * @param checkOnly true: write nothing, name what differs on the error stream
 * @returns exit code: 0, or 1 when `checkOnly` and something differs
 */
export function settle(files: readonly GeneratedFile[], folder: string | undefined, checkOnly: boolean): number {
  const wanted = new Set(files.map((file) => file.path));
  const present = folder !== undefined && existsSync(folder) ? readdirSync(folder).map((name) => `${folder}/${name}`) : [];
  const stale = present.filter((path) => !wanted.has(path));
  const changed = files.filter((file) => !existsSync(file.path) || readFileSync(file.path, "utf8") !== file.text);

  if (checkOnly) {
    for (const file of changed) console.error(`${file.path} is not what the generator writes; run npm run generate`);
    for (const path of stale) console.error(`${path} has nothing to be generated from; run npm run generate`);
    return changed.length + stale.length === 0 ? 0 : 1;
  }
  for (const file of changed) {
    mkdirSync(dirname(file.path), { recursive: true });
    writeFileSync(file.path, file.text);
    console.log(`wrote ${file.path}`);
  }
  for (const path of stale) {
    rmSync(path);
    console.log(`removed ${path}`);
  }
  return 0;
}
