import { lstatSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { FileEntry, FileSource } from "../model/fileSource.ts";

/** What systems and editors leave lying about; no contribution. */
const LITTER = new Set([".DS_Store", "Thumbs.db", ".gitkeep"]);

/**
 * The files below `datasets` of a repository.
 *
 * @param root - folder of the repository
 * @throws Error when there is no such folder
 */
export function diskSource(root: string): FileSource {
  return {
    *list() {
      yield* below(root, "datasets");
    },
    read: (path) => readFileSync(join(root, path)),
  };
}

function* below(root: string, folder: string): Generator<FileEntry> {
  const names = readdirSync(join(root, folder)).sort();
  for (const name of names) {
    if (LITTER.has(name)) continue;
    const path = `${folder}/${name}`;
    const stats = lstatSync(join(root, path));
    if (stats.isDirectory()) yield* below(root, path);
    // A pipe or device would never come to an end.
    else yield { path, link: !stats.isFile(), bytes: stats.size };
  }
}
