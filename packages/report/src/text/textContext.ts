import type { Sheet } from "../view/sheet.ts";
import type { Paint } from "./paint.ts";
import { hang, wrapText } from "./wrapText.ts";

/** What every section of the terminal summary is set with. */
export interface TextContext {
  sheet: Sheet;
  /** Columns. */
  width: number;
  paint: Paint;
}

/** A labelled line under an entry; nothing when there is nothing to say. */
export const labelled = (label: string, text: string | undefined, width: number): string[] =>
  text ? hang(`    ${label}: `, text, width) : [];

const rest = 6;

/** A paragraph whose first line stands out to the left by four columns, so that the eye finds the next entry. */
export function outdented(text: string, width: number): string[] {
  return wrapText(text, Math.max(16, width - rest)).map((line, index) => `${" ".repeat(index === 0 ? 2 : rest)}${line}`);
}
