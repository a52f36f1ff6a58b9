import { markdownTable } from "markdown-table";
import { type WordTable, withoutEmptyColumns } from "../view/wordTable.ts";
import { escapeMarkdown } from "./escapeMarkdown.ts";

/** A table, or the reason why there is none. */
export function tableBlock(table: WordTable, empty: string): string {
  if (table.rows.length === 0) return empty;
  const { head, rows } = withoutEmptyColumns(table);
  // Not padded: one long cell would fill every row with blanks.
  return markdownTable([head, ...rows.map((row) => row.map(escapeMarkdown))], { alignDelimiters: false });
}

/** A list, or the reason why there is none; entries are Markdown. */
export function listBlock(entries: readonly string[], empty: string, numbered = false): string {
  if (entries.length === 0) return empty;
  return entries.map((entry, index) => `${numbered ? `${index + 1}.` : "-"} ${entry}`).join("\n");
}

/** "**why:** text" with the text escaped; undefined when there is nothing to say. */
export function labelledText(label: string, text: string | undefined): string | undefined {
  return text ? `**${label}:** ${escapeMarkdown(text)}` : undefined;
}

/** Nested list entries under a list entry; "" for none. `depth` 2 suits a dash, 3 a number below ten. */
export function nested(entries: readonly (string | undefined)[], depth = 2): string {
  return entries
    .filter((entry) => entry !== undefined)
    .map((entry) => `\n${" ".repeat(depth)}- ${entry}`)
    .join("");
}
