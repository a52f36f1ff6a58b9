import type { RecordRule } from "../../model/rule.ts";
import { eachMatch } from "../../shared/eachMatch.ts";

const MARKUP = /<\/?[a-zA-Z][^<>]*>|<!--|&(?:[a-zA-Z]+|#\d+|#x[0-9a-fA-F]+);|\]\((?:https?:|javascript:)[^)]*\)/g;

const PIECES = ["<", "&", "]("];

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
    eachMatch(record, MARKUP, (piece) => ({ message: "markup in a text", received: piece, expected: "plain text" }), PIECES),
};
