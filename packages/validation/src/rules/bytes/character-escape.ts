import type { BytesRule, Complaint } from "../../model/rule.ts";
import { codePoint } from "../../shared/matchComplaints.ts";

/** A backslash with what it makes of the next letters; those of quote marks and of itself first, so that they are passed over. */
const ESCAPES = /\\(?:["\\/]|u([0-9a-fA-F]{4})(?:\\u([dD][c-fC-F][0-9a-fA-F]{2}))?|([bfnrt]))/g;
const QUOTE = 34;
const SHORT: Readonly<Record<string, string>> = { b: "\b", f: "\f", n: "\n", r: "\r", t: "\t" };
const WORDS: Readonly<Record<string, string>> = { "\n": "a line end", "\r": "a line end", "\t": "a tab" };
/** Most places that one file is told about. */
const MOST = 20;

/** What is written is what is read. */
export const characterEscape: BytesRule = {
  code: "UC-114",
  name: "character-escape",
  scope: "bytes",
  severity: "error",
  title: "No character is written as an escape, but for quote marks and backslashes",
  why: "A reviewer reads the escape, a report prints the character: markup, a control or a look-alike letter that no other rule has seen.",
  bad: '"title": "Hum \\u202e and buzz"',
  good: '"title": "Hum and buzz"',
  check({ path, text, utf8, source }) {
    if (!path.endsWith(".json") || !utf8 || !hasOther(text)) return [];
    const complaints: Complaint[] = [];
    for (const { 0: written, 1: unit, 2: second, 3: letter, index } of source().text.matchAll(ESCAPES)) {
      const character = letter !== undefined ? SHORT[letter] : unit === undefined ? undefined : decoded(unit, second);
      if (character === undefined) continue;
      const plain = /^[\x20-\x7e]$/.test(character);
      complaints.push({
        at: { offset: index, length: written.length },
        message: `${WORDS[character] ?? codePoint(character)} written as an escape`,
        received: written,
        expected: plain ? "the character itself" : "printable ASCII",
        ...(plain ? { nearest: character } : {}),
        rank: -0.5,
      });
      if (complaints.length === MOST) break;
    }
    return complaints;
  },
};

/** Whether a text has escapes but those of quote marks: most files have none. */
function hasOther(text: string): boolean {
  for (let at = text.indexOf("\\"); at >= 0; at = text.indexOf("\\", at + 2)) if (text.charCodeAt(at + 1) !== QUOTE) return true;
  return false;
}

/** The character of one or two code units. */
function decoded(unit: string, second: string | undefined): string {
  const units = [unit, ...(second === undefined ? [] : [second])].map((hex) => Number.parseInt(hex, 16));
  return String.fromCharCode(...units);
}
