/** A cell within a text: offsets in UTF-16 units, quote marks included, spaces around it not. */
export interface CellSpan {
  offset: number;
  length: number;
}

/**
 * Where each cell of one CSV record lies. The CSV library says where records end but not where cells begin.
 *
 * @param text - the whole file
 * @param start - offset of the record
 * @param end - offset after the record, its line ending included or not
 */
export function cellSpans(text: string, start: number, end: number): CellSpan[] {
  let stop = end;
  while (stop > start && (text[stop - 1] === "\n" || text[stop - 1] === "\r")) stop--;
  const spans: CellSpan[] = [];
  let at = start;
  for (;;) {
    let first = at;
    while (first < stop && text[first] !== "," && text[first]!.trim() === "") first++;
    let last = first;
    if (text[first] === '"' && first < stop) last = closingQuote(text, first, stop) + 1;
    while (last < stop && text[last] !== ",") last++;
    let trimmed = last;
    while (trimmed > first && text[trimmed - 1]!.trim() === "") trimmed--;
    spans.push({ offset: first, length: trimmed - first });
    if (last >= stop) return spans;
    at = last + 1;
  }
}

/** Offset of the quote mark that closes the one at `open`; the last character when none does. */
function closingQuote(text: string, open: number, stop: number): number {
  for (let i = open + 1; i < stop; i++) {
    if (text[i] !== '"') continue;
    if (text[i + 1] === '"' && i + 1 < stop) i++;
    else return i;
  }
  return stop - 1;
}
