import { readFileSync, statSync } from "node:fs";
import { InputError, onFile } from "../inputError.ts";

const LARGEST_BYTES = 5_000_000;

const megabytes = (bytes: number): string => `${(bytes / 1_000_000).toFixed(1)} MB`;

/** 1-based line of the first byte that is no UTF-8, found by decoding line after line. */
function lineOfBadByte(bytes: Buffer): number {
  let line = 1;
  for (let start = 0; start < bytes.length; line++) {
    const end = bytes.indexOf(0x0a, start);
    const stop = end === -1 ? bytes.length : end + 1;
    try {
      new TextDecoder("utf-8", { fatal: true }).decode(bytes.subarray(start, stop));
    } catch {
      return line;
    }
    start = stop;
  }
  return line;
}

function decode(path: string, bytes: Buffer): string {
  const isUtf16 = (bytes[0] === 0xff && bytes[1] === 0xfe) || (bytes[0] === 0xfe && bytes[1] === 0xff);
  if (isUtf16) throw new InputError(path, "this is UTF-16 text, not UTF-8", "save it as UTF-8 (spreadsheets: CSV UTF-8)");
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    const line = lineOfBadByte(bytes);
    throw new InputError(path, `line ${line} is not UTF-8 text`, "save it as UTF-8 (spreadsheets: CSV UTF-8)");
  }
}

/**
 * Reads a whole text file. A byte order mark is dropped.
 *
 * @throws InputError when it is missing, no ordinary file, above 5 MB (refused before it is read) or no UTF-8 text
 */
export function readTextFile(path: string): string {
  return onFile(path, () => {
    const facts = statSync(path);
    if (!facts.isFile()) throw new InputError(path, facts.isDirectory() ? "this is a folder, not a file" : "this is no ordinary file");
    if (facts.size > LARGEST_BYTES) {
      throw new InputError(path, `${megabytes(facts.size)} is more than a job can be; the limit is ${megabytes(LARGEST_BYTES)}`);
    }
    return decode(path, readFileSync(path));
  });
}
