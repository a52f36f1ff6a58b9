import type { Path } from "./path.ts";

/**
 * A JSON pointer (RFC 6901) as a path; steps into lists become numbers.
 *
 * @param root - the value that the pointer points into
 */
export function pointerPath(pointer: string, root: unknown): Path {
  const path: (string | number)[] = [];
  let value = root;
  for (const raw of pointer.split("/").slice(1)) {
    const name = raw.replaceAll("~1", "/").replaceAll("~0", "~");
    const step = Array.isArray(value) ? Number(name) : name;
    path.push(step);
    value = typeof value === "object" && value !== null ? (value as Record<string | number, unknown>)[step] : undefined;
  }
  return path;
}
