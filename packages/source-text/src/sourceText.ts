/** A file's text without its byte order mark, and where each of its lines begins. */
export interface SourceText {
  name: string;
  text: string;
  hadByteOrderMark: boolean;
  lineStarts: readonly number[];
}

/** 1-based; columns count UTF-16 units, as editors and the JSON parser do. */
export interface Position {
  line: number;
  column: number;
}

/**
 * Prepares a file for exact positions. The byte order mark is dropped first, since no editor counts it as a column.
 *
 * @param name - what diagnostics call the file
 * @param raw - its text as decoded
 */
export function sourceText(name: string, raw: string): SourceText {
  const hadByteOrderMark = raw.charCodeAt(0) === 0xfeff;
  const text = hadByteOrderMark ? raw.slice(1) : raw;
  return { name, text, hadByteOrderMark, lineStarts: findLineStarts(text) };
}

/** Offsets at which lines begin; LF, CRLF and a lone CR each end a line. */
export function findLineStarts(text: string): number[] {
  const starts = [0];
  for (let i = 0; i < text.length; i++) {
    const code = text.charCodeAt(i);
    if (code === 10 || (code === 13 && text.charCodeAt(i + 1) !== 10)) starts.push(i + 1);
  }
  return starts;
}

/** Line and column of an offset; an offset beyond the end gives the end. */
export function positionAt(source: SourceText, offset: number): Position {
  const at = Math.min(Math.max(offset, 0), source.text.length);
  const { lineStarts } = source;
  let low = 0;
  let high = lineStarts.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (lineStarts[middle]! <= at) low = middle;
    else high = middle - 1;
  }
  return { line: low + 1, column: at - lineStarts[low]! + 1 };
}
