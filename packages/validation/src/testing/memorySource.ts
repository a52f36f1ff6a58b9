import type { FileSource } from "../model/fileSource.ts";

/** Files of a test, by path. A value that is not text stands for bytes, or for a link to somewhere. */
export function memorySource(files: Readonly<Record<string, string | Uint8Array | { link: true }>>): FileSource {
  const encoder = new TextEncoder();
  const bytesOf = (path: string): Uint8Array => {
    const file = files[path];
    if (file === undefined || (typeof file === "object" && "link" in file)) throw new Error(`${path} cannot be read`);
    return typeof file === "string" ? encoder.encode(file) : file;
  };
  return {
    *list() {
      for (const path of Object.keys(files).sort()) {
        const file = files[path];
        const link = typeof file === "object" && "link" in file;
        yield { path, link, bytes: link ? 0 : bytesOf(path).length };
      }
    },
    read: bytesOf,
  };
}
