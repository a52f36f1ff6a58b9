import { type ParseError, printParseErrorCode } from "jsonc-parser";
import { decimalComma } from "./decimalComma.ts";
import { endFault } from "./endFault.ts";
import type { Fault } from "./fault.ts";
import { isMergeMark } from "./mergeMark.ts";
import type { Problems } from "./problems.ts";
import type { SourceText } from "./sourceText.ts";

/** What the parser stumbles over next when the earlier fault has thrown it off. */
const CONSEQUENCES = new Set([
  "PropertyNameExpected",
  "ValueExpected",
  "ColonExpected",
  "CommaExpected",
  "EndOfFileExpected",
  "CloseBraceExpected",
  "CloseBracketExpected",
]);
/** Faults looked into; no one reads further. */
const FAULT_LIMIT = 2000;
/** What the parser misses where the file ends too early. */
const UNFINISHED = new Set([
  "PropertyNameExpected",
  "ValueExpected",
  "ColonExpected",
  "CommaExpected",
  "CloseBraceExpected",
  "CloseBracketExpected",
]);
/** Numbers that other languages know. */
const NO_NUMBERS = new Set(["nan", "infinity", "-infinity", "+infinity", "inf"]);
const NO_VALUES = new Set(["none", "nil", "undefined"]);
const WORD_END = /[\s,:{}[\]"]/;

/** Reports the parser's syntax errors, one for each fault of the writer, in words. */
export function reportSyntaxFaults(source: SourceText, errors: readonly ParseError[], noun: string, problems: Problems): void {
  const { text } = source;
  if (errors.length > FAULT_LIMIT) problems.breakOff();
  let previous: { name: string; offset: number; end: number } | undefined;
  for (const error of errors.slice(0, FAULT_LIMIT)) {
    const name = printParseErrorCode(error.error);
    if (previous && CONSEQUENCES.has(name) && follows(text, previous, name, error.offset)) {
      // A chain of consequences ends where the parser finds its feet again.
      previous = { ...previous, end: Math.max(previous.end, error.offset + error.length) };
      continue;
    }
    const fault = describe(text, noun, name, error.offset, error.length);
    problems.add({ source, offset: fault.offset, length: fault.length }, fault);
    previous = { name: fault.code, offset: error.offset, end: Math.max(error.offset + error.length, fault.offset + fault.length) };
  }
}

function follows(text: string, previous: { name: string; offset: number; end: number }, name: string, offset: number): boolean {
  if (offset === previous.offset) return true;
  if (previous.name === "comma-missing" && name === "CommaExpected") return false;
  const between = text.slice(previous.end, offset);
  if (between.trim() === "") return true;
  // With one bracket off, the parser takes every list for an object and back until the end.
  if (previous.name === "bracket-mismatched") return true;
  // An unquoted name leaves its colon and value over, up to the next comma.
  return (
    previous.name === "symbol-unknown" &&
    name !== "CommaExpected" &&
    between.length < 400 &&
    !/[,"{[]/.test(between.replace(/"[^"\r\n]*"/g, ""))
  );
}

function describe(text: string, noun: string, name: string, offset: number, length: number): Fault {
  const here = { offset, length: Math.max(1, length) };
  const at = text[offset] ?? "";
  const closing = at === "}" || at === "]";
  if (at === "" && UNFINISHED.has(name)) return endFault(text, offset);
  switch (name) {
    case "InvalidSymbol":
    case "InvalidNumberFormat":
    case "UnexpectedEndOfNumber":
      return wordFault(text, offset);
    case "UnexpectedEndOfString":
      return {
        ...here,
        code: "quote-missing",
        message: "the text is not closed",
        received: cut(text.slice(offset, offset + length)),
        expected: 'a " at its end, on the same line',
      };
    case "InvalidCharacter": {
      const control = offset + 1 + Math.max(0, controlIndex(text.slice(offset + 1, offset + length)));
      const what = text[control] === "\t" ? "a tab" : "a control character";
      return {
        offset: control,
        length: 1,
        code: "control-character",
        message: `${what} inside a text`,
        expected: "printable characters",
        help: "use a space",
      };
    }
    case "InvalidEscapeCharacter":
    case "InvalidUnicode":
      return {
        ...here,
        code: "escape-unknown",
        message: "a backslash sequence that JSON does not know",
        received: cut(text.slice(offset, offset + length)),
        expected: '\\" \\\\ \\/ \\b \\f \\n \\r \\t or \\u and four hexadecimal digits',
        help: "a plain backslash is written twice",
      };
    case "InvalidCommentToken":
    case "UnexpectedEndOfComment":
      return {
        ...here,
        code: "comment",
        message: "JSON has no comments",
        received: cut(text.slice(offset, offset + length)),
        help: 'put the words into a "note" or into "notes"',
      };
    case "EndOfFileExpected":
      return {
        ...here,
        code: "text-after-end",
        message: `something follows after the end of the ${noun}`,
        received: cut(text.slice(offset, offset + Math.max(1, length))),
        expected: "nothing after the closing }",
      };
    case "ColonExpected":
      return {
        ...here,
        code: "colon-missing",
        message: "no colon after the property's name",
        received: cut(text.slice(offset, offset + length)),
        expected: ":",
      };
    case "CommaExpected":
      if (closing)
        return {
          ...here,
          code: "bracket-mismatched",
          message: `${at} closes what was opened by ${at === "]" ? "{" : "["}`,
          received: at,
          expected: at === "]" ? "}" : "]",
        };
      if (/\d/.test(at) && text[offset - 1] === "0") return wordFault(text, offset);
      return {
        ...here,
        code: "comma-missing",
        message: "no comma between two entries",
        received: cut(text.slice(offset, offset + length)),
        expected: "a comma before it",
      };
    default: {
      const before = lastInkBefore(text, offset);
      if (closing && before.char === ",")
        return {
          offset: before.offset,
          length: 1,
          code: "comma-trailing",
          message: `a comma before the closing ${at}`,
          received: ",",
          expected: "no comma after the last entry",
        };
      if (at === "," && (before.char === "," || before.char === "[" || before.char === "{"))
        return {
          ...here,
          code: "comma-extra",
          message: "a comma with nothing before it",
          received: ",",
          expected: "one comma between two entries",
        };
      const comma = decimalComma(text, offset, before);
      if (comma !== undefined) return comma;
      return name === "PropertyNameExpected"
        ? {
            ...here,
            code: "name-missing",
            message: "no property name here",
            received: cut(text.slice(offset, offset + length)),
            expected: 'a name in quotes: "title"',
          }
        : {
            ...here,
            code: "value-missing",
            message: "no value here",
            received: cut(text.slice(offset, offset + length)) || "the end of the file",
            expected: "a text in quotes, a number, true, false, { or [",
          };
    }
  }
}

/** A word that is no JSON: found whole, since the parser may have split it (47k is a number and a k to it). */
function wordFault(text: string, offset: number): Fault {
  let start = offset;
  while (start > 0 && !WORD_END.test(text[start - 1]!)) start--;
  let end = offset;
  while (end < text.length && !WORD_END.test(text[end]!)) end++;
  const word = text.slice(start, Math.max(end, start + 1));
  const here = { offset: start, length: word.length, received: cut(word) };
  if (/^['‘’“”„«`]/.test(word))
    return {
      ...here,
      code: "quote-unknown",
      message: "quote marks that JSON does not know",
      expected: 'straight double quotes: "…"',
      help: "word processors turn quote marks; a plain text editor does not",
    };
  const small = word.toLowerCase();
  if (small === "true" || small === "false" || small === "null")
    return {
      ...here,
      code: "symbol-unknown",
      message: "a word in the wrong case",
      expected: "true or false, in small letters",
      nearest: small,
    };
  if (NO_NUMBERS.has(small) || NO_VALUES.has(small))
    return {
      ...here,
      code: "symbol-unknown",
      message: `JSON has no ${cut(word)}`,
      expected: NO_NUMBERS.has(small) ? "a number" : "a value",
      help: "leave the property out where nothing is known",
    };
  if (isMergeMark(word))
    return {
      ...here,
      code: "merge-mark",
      message: "a mark of a merge that was not finished",
      expected: "one of the two versions, without the three marks",
    };
  if (/^[-+.\d]/.test(word))
    return {
      ...here,
      code: "number-malformed",
      message: "a number that JSON does not know",
      expected: "a plain number (0.5, 47, 1e3), or the value in quotes as it stands on the part",
      nearest: plainNumber(word) ?? `"${cut(word)}"`,
    };
  return {
    ...here,
    code: "symbol-unknown",
    message: "a word without quotes",
    expected: "texts and names in quotes",
    nearest: `"${cut(word)}"`,
  };
}

/** A number as JSON has it: 0245 is 245, .5 is 0.5, 0xF5 is 245. */
function plainNumber(word: string): string | undefined {
  const value = Number(word);
  return word !== "" && Number.isFinite(value) ? String(value) : undefined;
}

function lastInkBefore(text: string, offset: number): { offset: number; char: string } {
  let at = offset - 1;
  while (at >= 0 && text.charCodeAt(at) <= 32) at--;
  return { offset: at, char: text[at] ?? "" };
}

function controlIndex(text: string): number {
  for (let i = 0; i < text.length; i++) if (text.charCodeAt(i) < 32) return i;
  return -1;
}

function cut(text: string): string {
  return text.length > 40 ? `${text.slice(0, 40)}…` : text;
}
