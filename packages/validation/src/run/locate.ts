import { findPlace, type Place, Problems, positionAt, readJson, type SourceText, spanOf } from "@underchassis/source-text";
import type { Diagnostic } from "../model/diagnostic.ts";
import type { Target } from "../model/rule.ts";
import { RECORD_LIMITS } from "../read/recordLimits.ts";

type Position = Pick<Diagnostic, "line" | "column" | "endLine" | "endColumn">;

/** Finds the positions of one file's complaints; the close reading is done once, and only when a path asks for it. */
export class Locator {
  readonly #source: SourceText;
  #root: Place | undefined;

  constructor(source: SourceText) {
    this.#source = source;
  }

  /** Line and column of both ends of a target. @throws Error when the target lies outside the file: the rule is wrong then */
  positionOf(target: Target): Position {
    const { offset, length } = this.#stretch(target);
    if (!(offset >= 0 && length >= 0 && offset + length <= this.#source.text.length))
      throw new RangeError(`the stretch ${offset}+${length} lies outside ${this.#source.name}`);
    const start = positionAt(this.#source, offset);
    const end = positionAt(this.#source, offset + length);
    return { line: start.line, column: start.column, endLine: end.line, endColumn: end.column };
  }

  #stretch(target: Target): { offset: number; length: number } {
    if ("offset" in target) return target;
    if ("line" in target) {
      const { line, column, length } = target;
      const offset = (this.#source.lineStarts[line - 1] ?? Number.NaN) + column - 1;
      // A reader points at one character at least, also where the file ends.
      return { offset, length: Math.min(length, this.#source.text.length - offset) };
    }
    this.#root ??= readJson(this.#source, RECORD_LIMITS, new Problems())?.place;
    if (this.#root === undefined) throw new Error(`${this.#source.name} cannot be read again for its places`);
    const span = spanOf(this.#root, target.path, target.part);
    if (target.within === undefined || !findPlace(this.#root, target.path).exact) return inked(this.#source.text, span);
    const start = rawIndex(this.#source.text, span.offset, target.within.offset);
    return { offset: start, length: rawIndex(this.#source.text, span.offset, target.within.offset + target.within.length) - start };
  }
}

/** A value of many lines is pointed at by its first: an object's brace says no more than its line does. */
function inked(text: string, { offset, length }: { offset: number; length: number }): { offset: number; length: number } {
  const lineEnd = text.slice(offset, offset + length).search(/[\r\n]/);
  return { offset, length: lineEnd < 0 ? length : lineEnd };
}

/** Offset in the file of the `index`th character of a JSON text whose opening quote mark stands at `quote`. */
function rawIndex(text: string, quote: number, index: number): number {
  let at = quote + 1;
  for (let count = 0; count < index && at < text.length; count++) {
    if (text[at] !== "\\") at += 1;
    else at += text[at + 1] === "u" ? 6 : 2;
  }
  return at;
}
