import type { RecordRule } from "../../model/rule.ts";
import { eachMatch } from "../../shared/eachMatch.ts";

const MARKUP = /<\/?[a-zA-Z][^<>]*>|<!--|&(?:[a-zA-Z]+|#\d+|#x[0-9a-fA-F]+);|\]\((?:https?:|javascript:)[^)]*\)/g;

/** Whether a text holds what markup begins with: a mark, and behind it what makes it one. */
function mayHold(text: string): boolean {
  return (
    followed(text, "<", (code) => isLetter(code) || code === 0x2f || code === 0x21 || code === 0x5c) ||
    followed(text, "&", (code) => isLetter(code) || code === 0x23) ||
    text.includes("](")
  );
}

function followed(text: string, mark: string, fits: (code: number) => boolean): boolean {
  for (let at = text.indexOf(mark); at >= 0; at = text.indexOf(mark, at + 1)) if (fits(text.charCodeAt(at + 1))) return true;
  return false;
}

const isLetter = (code: number): boolean => (code >= 0x41 && code <= 0x5a) || (code >= 0x61 && code <= 0x7a);

/** Texts are text. */
export const plainText: RecordRule = {
  code: "UC-414",
  name: "plain-text",
  scope: "record",
  severity: "error",
  title: "Texts hold no HTML and no links in Markdown",
  why: "Reports print texts as they stand; addresses belong into sources.",
  bad: '"summary": "A <b>stiff</b> supply."',
  good: '"summary": "A stiff supply."',
  check: (record) =>
    eachMatch(record, MARKUP, (piece) => ({ message: "markup in a text", received: piece, expected: "plain text" }), mayHold),
};
