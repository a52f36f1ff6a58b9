import { createScanner } from "jsonc-parser";
import type { Problems } from "./problems.ts";
import type { ReadLimits } from "./readLimits.ts";
import type { SourceText } from "./sourceText.ts";

// Values of jsonc-parser's SyntaxKind, which is a const enum and leaves nothing to import.
const OPEN_BRACE = 1;
const CLOSE_BRACE = 2;
const OPEN_BRACKET = 3;
const CLOSE_BRACKET = 4;
const END_OF_FILE = 17;

/**
 * Goes through the tokens without recursion, so that a hostile file can exhaust neither the stack nor the memory of the parser
 * proper. False (and a diagnostic) when the file must not be parsed.
 */
export function withinJsonLimits(source: SourceText, limits: ReadLimits, problems: Problems): boolean {
  const scanner = createScanner(source.text, true);
  let depth = 0;
  for (let tokens = 1; ; tokens++) {
    const token: number = scanner.scan();
    if (token === END_OF_FILE) return true;
    const span = { source, offset: scanner.getTokenOffset(), length: 1 };
    if (token === OPEN_BRACE || token === OPEN_BRACKET) {
      depth++;
      if (depth > limits.depth) {
        problems.add(span, {
          code: "nesting-too-deep",
          message: "the brackets are nested too deeply",
          expected: `at most ${limits.depth} levels`,
        });
        return false;
      }
    } else if (token === CLOSE_BRACE || token === CLOSE_BRACKET) depth--;
    if (tokens > limits.tokens) {
      problems.add(span, {
        code: "file-too-large",
        message: `the file holds too many values for a ${limits.noun}`,
        expected: `at most ${limits.tokens} values and punctuation marks`,
      });
      return false;
    }
  }
}
