import { parse } from "jsonc-parser";

/**
 * What can still be made out of a record that is no JSON: names and ids in front of the fault, and mostly behind it. Never to be judged; it only
 * keeps other files from being blamed for naming what stands in a broken one.
 *
 * @returns undefined when nothing can be made out
 */
export function salvage(text: string): unknown {
  try {
    return parse(text, [], { allowTrailingComma: true });
  } catch {
    // Brackets nested without end exhaust the parser's stack.
    return undefined;
  }
}
