import { lstatSync, mkdirSync } from "node:fs";
import { dirname } from "node:path";
import { InputError, onFile } from "../inputError.ts";
import { writeWhole } from "./writeWhole.ts";

/**
 * Writes some new files, all or none as far as can be seen beforehand. Their folders are made.
 *
 * @returns their paths
 * @throws InputError when one of them lies there already, or cannot be written
 */
export function writeNew(files: readonly { path: string; text: string }[]): string[] {
  for (const { path } of files) {
    if (onFile(path, () => lstatSync(path, { throwIfNoEntry: false })) === undefined) continue;
    throw new InputError(path, "this file is there already, and is not written over", "name another folder, or move it away");
  }
  return files.map(({ path, text }) => {
    onFile(dirname(path), () => mkdirSync(dirname(path), { recursive: true }));
    writeWhole(path, text);
    return path;
  });
}
