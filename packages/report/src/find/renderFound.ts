import type { FindHit, FindKind } from "@underchassis/dataset";
import { visible } from "../clean/visible.ts";
import { hang } from "../text/wrapText.ts";

const kindWords: Readonly<Record<FindKind, string>> = {
  stage: "stage template",
  "failure-note": "failure note",
  tube: "tube",
  caution: "caution",
  "rule-of-thumb": "rule of thumb",
  check: "check",
  table: "table",
};

/**
 * What was found, best first: title and kind, the sentence that answers, and how the id is used. `width` in columns, 40 to 200;
 * default 96.
 */
export function renderFound(hits: readonly FindHit[], { width: wanted = 96 }: { width?: number } = {}): string {
  const width = Math.min(200, Math.max(40, Math.round(wanted)));
  const blocks = hits.map(({ id, kind, title, quote, use }, index) => {
    const lead = `${index + 1}. `;
    const indent = " ".repeat(lead.length);
    return [
      ...hang(lead, visible(`${title} (${kindWords[kind]}: ${id})`), width),
      ...(quote === title ? [] : hang(`${indent}says: `, visible(quote), width)),
      ...hang(`${indent}use: `, visible(use), width),
    ].join("\n");
  });
  return `${blocks.join("\n")}\n`;
}
