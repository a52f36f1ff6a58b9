import type { Location } from "./diagnostic.ts";
import type { Path } from "./path.ts";
import { positionAt, type SourceText } from "./sourceText.ts";

/** A stretch of a file: offsets in UTF-16 units. */
export interface Span {
  source: SourceText;
  offset: number;
  length: number;
}

/**
 * Where one value of the merged job was written, and where each of its members was. It mirrors the job's own shape, so that
 * a path finds its place whichever file it came from.
 */
export interface Place {
  value: Span;
  /** The property's name, quotes included; absent in lists and at the top. */
  key?: Span;
  members: Map<string | number, Place>;
  /** True when some of what was written here could not be taken over, so that nothing should be called missing. */
  doubtful?: boolean;
}

/** A value with the place of everything inside it. */
export interface Placed {
  value: unknown;
  place: Place;
}

/** The place of a path, or the nearest enclosing place that was written. `exact` tells which. */
export function findPlace(root: Place, path: Path): { place: Place; exact: boolean } {
  let place = root;
  for (const step of path) {
    const member = place.members.get(step);
    if (member === undefined) return { place, exact: false };
    place = member;
  }
  return { place, exact: true };
}

/** The stretch that a diagnostic about `path` points at. A path that was never written points at its nearest enclosing name. */
export function spanOf(root: Place, path: Path, part: "key" | "value" = "value"): Span {
  const { place, exact } = findPlace(root, path);
  if (part === "key" || !exact) return place.key ?? place.value;
  return place.value;
}

/** File, line and column of a stretch. */
export function locationOf(span: Span): Location {
  return { file: span.source.name, ...positionAt(span.source, span.offset) };
}

/** The length of a stretch on its first line, one at least. */
export function lengthOnLine({ source, offset, length }: Span): number {
  const text = source.text.slice(offset, offset + Math.min(length, 1000));
  const end = text.search(/[\r\n]/);
  return Math.max(1, end < 0 ? text.length : end);
}
