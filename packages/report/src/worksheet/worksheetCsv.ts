import type { WorkTable } from "@underchassis/grading";

/** A cell that a spreadsheet would take for a formula is led by an apostrophe nowhere: the reader must get it back; it is quoted. */
const quoted = (text: string): string => (/[",\r\n]|^\s|\s$/.test(text) ? `"${text.replaceAll('"', '""')}"` : text);

/** A form as CSV (RFC 4180, line feeds): what a spreadsheet opens and the job reader reads. */
export function renderWorkTable({ head, rows }: WorkTable): string {
  const lines = [head, ...rows.map((row) => head.map((name) => row[name] ?? ""))];
  return lines.map((cells) => `${cells.map(quoted).join(",")}\n`).join("");
}
