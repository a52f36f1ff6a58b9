import { lstatSync, readFileSync, renameSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { TableDescriptions } from "@underchassis/dataset";
import { applyFixes } from "../fixes/applyFixes.ts";
import type { FileSource } from "../model/fileSource.ts";
import { violationsOf } from "../shared/violationsOf.ts";

/**
 * Mends what needs no judgement in every wanted file, each written whole.
 *
 * @param root - folder of the repository
 * @returns the files that were changed
 */
export function fixFiles(root: string, source: FileSource, only: (path: string) => boolean): string[] {
  const descriptions = tableDescriptions(root);
  return [...source.list()].flatMap(({ path, link }) => {
    if (link || !only(path)) return [];
    const text = applyFixes(path, source.read(path), descriptions);
    if (text === undefined) return [];
    const file = join(root, path);
    // Written beside and moved over, so that a run that is cut short leaves no half file.
    const beside = `${file}.part-written`;
    writeFileSync(beside, text, { mode: lstatSync(file).mode });
    renameSync(beside, file);
    return [path];
  });
}

function tableDescriptions(root: string): TableDescriptions | undefined {
  try {
    const value: unknown = JSON.parse(readFileSync(join(root, "datasets/tables/tables.json"), "utf8"));
    return violationsOf("table-descriptions", value).length === 0 ? (value as TableDescriptions) : undefined;
  } catch {
    return undefined;
  }
}
