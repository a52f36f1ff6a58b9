import { existsSync } from "node:fs";
import { dirname, join } from "node:path";
import { env } from "node:process";
import { fileURLToPath } from "node:url";
import { DatasetError } from "./dataset.ts";

/**
 * Finds the datasets folder: the one that UNDERCHASSIS_DATASETS names, else the nearest `datasets/manifest.json` at or
 * above the code that is running (which is the same folder for the sources and for the bundled command).
 *
 * @param startUrl file URL to start the search from
 * @throws DatasetError when there is none
 */
export function findDatasets(startUrl: string = import.meta.url): string {
  const named = env.UNDERCHASSIS_DATASETS;
  if (named !== undefined && named !== "") {
    if (!existsSync(join(named, "manifest.json"))) throw new DatasetError(`UNDERCHASSIS_DATASETS is ${named}, where no manifest.json lies`);
    return named;
  }
  const start = dirname(fileURLToPath(startUrl));
  for (let folder = start; ; folder = dirname(folder)) {
    const candidate = join(folder, "datasets");
    if (existsSync(join(candidate, "manifest.json"))) return candidate;
    if (folder === dirname(folder)) break;
  }
  throw new DatasetError(`no datasets/manifest.json at or above ${start}; UNDERCHASSIS_DATASETS can name the folder`);
}
