/** @jsxRuntime automatic @jsxImportSource preact */
import type { Sheet } from "../view/sheet.ts";

/** Anchor of a source in the list of sources; numbers, since ids are the job's or the dataset's own words. */
export const sourceAnchor = (index: number): string => `source-${index + 1}`;

/** A source with its kind, leading to its entry in the list where there is one. */
export function SourceLink({ id, sheet }: { id: string; sheet: Sheet }) {
  const { text, index } = sheet.source(id);
  return index < 0 ? <span>{text}</span> : <a href={`#${sourceAnchor(index)}`}>{text}</a>;
}
