import { type WordTable, withoutEmptyColumns } from "../view/wordTable.ts";
import { textWidth, wrapText } from "./wrapText.ts";

const gap = "  ";
/** No column is squeezed below this. */
const narrowest = 7;
/** Words up to this width are kept whole as long as another column can still give way. */
const longestKept = 18;

/** Takes from the widest column above its floor until the columns fit `room`; false when no column can give way. */
function squeeze(widths: number[], floors: readonly number[], room: number): boolean {
  while (widths.reduce((sum, size) => sum + size, 0) > room) {
    const spare = widths.map((size, column) => (size > (floors[column] ?? 0) ? size : 0));
    const widest = Math.max(...spare);
    if (widest === 0) return false;
    widths[spare.indexOf(widest)] = widest - 1;
  }
  return true;
}

/** Column widths that fit `width`: the widest give way first, words are broken only when nothing else helps. */
function fit(columns: readonly (readonly string[])[], width: number): number[] {
  const widths = columns.map((cells) => Math.min(width, Math.max(...cells.map(textWidth))));
  const words = columns.map((cells) => Math.max(...cells.flatMap((cell) => cell.split(" ")).map(textWidth)));
  const room = width - gap.length * (widths.length - 1);
  const floors = words.map((word) => Math.max(narrowest, Math.min(word, longestKept)));
  if (!squeeze(widths, floors, room))
    squeeze(
      widths,
      widths.map(() => narrowest),
      room,
    );
  return widths;
}

/**
 * A table of plain text: heading, rule, rows; cells wrap within their column, nothing is cut off. Columns without any
 * text are left out.
 */
export function textTable(table: WordTable, width: number): string[] {
  const { head, rows } = withoutEmptyColumns(table);
  const widths = fit(
    head.map((title, column) => [title, ...rows.map((row) => row[column] ?? "")]),
    width,
  );
  const [top = [], ...body] = [head, ...rows].map((row) => rowLines(row, widths));
  return [...top, widths.map((size) => "-".repeat(size)).join(gap), ...body.flat()];
}

function rowLines(row: readonly string[], widths: readonly number[]): string[] {
  const columns = row.map((cell, column) => wrapText(cell, widths[column] ?? narrowest));
  const height = Math.max(...columns.map((lines) => lines.length));
  return Array.from({ length: height }, (_, line) =>
    columns
      .map((lines, column) => {
        const text = lines[line] ?? "";
        return text + " ".repeat(Math.max(0, (widths[column] ?? 0) - textWidth(text)));
      })
      .join(gap)
      .trimEnd(),
  );
}
