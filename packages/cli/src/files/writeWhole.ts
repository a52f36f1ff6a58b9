import { closeSync, fsyncSync, openSync, renameSync, rmSync, statSync, writeFileSync } from "node:fs";
import { basename, dirname, join } from "node:path";
import { pid } from "node:process";
import { InputError, onFile } from "../inputError.ts";

function writeDraft(path: string, text: string): void {
  const handle = openSync(path, "wx");
  try {
    writeFileSync(handle, text);
    fsyncSync(handle);
  } finally {
    closeSync(handle);
  }
}

/**
 * Writes a text file whole or not at all: beside its place under another name first, then moved there in one step.
 * What stood there before stays until that step.
 *
 * @throws InputError when it cannot be written
 */
export function writeWhole(path: string, text: string): void {
  const draft = join(dirname(path), `.${basename(path)}.${pid}.tmp`);
  onFile(path, () => {
    if (statSync(path, { throwIfNoEntry: false })?.isDirectory()) throw new InputError(path, "this is a folder; give the name of a file");
    try {
      writeDraft(draft, text);
      renameSync(draft, path);
    } catch (error) {
      rmSync(draft, { force: true });
      throw error;
    }
  });
}
