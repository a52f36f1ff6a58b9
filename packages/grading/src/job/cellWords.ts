import type { Cell, Problems } from "@underchassis/source-text";

/** A word of the job format as people type it into a spreadsheet: `Tubes out` means `tubes-out`. */
export function asId(text: string): string {
  return text.toLowerCase().replace(/[\s_]+/g, "-");
}

const YES = new Set(["yes", "y", "true", "x", "1"]);
const NO = new Set(["no", "n", "false", "0", "-"]);

/** A yes-or-no cell; undefined when it is blank or (with a diagnostic) neither. */
export function yesOrNo(cell: Cell | undefined, column: string, problems: Problems): boolean | undefined {
  if (cell === undefined) return undefined;
  const word = cell.text.toLowerCase();
  if (YES.has(word)) return true;
  if (NO.has(word)) return false;
  problems.add(cell.span, { code: "csv-yes-no", message: `"${column}" is neither yes nor no`, received: cell.text, expected: "yes or no" });
  return undefined;
}
