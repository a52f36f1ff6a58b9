import { expect, it } from "vitest";
import type { Diagnostic } from "../model/diagnostic.ts";
import type { Grader } from "../model/grader.ts";
import type { Rule } from "../model/rule.ts";
import { type ValidateOptions, validateFiles } from "../run/validateFiles.ts";
import { memorySource } from "./memorySource.ts";
import { SOUND_FILES } from "./soundFiles.ts";

type Files = Readonly<Record<string, string | Uint8Array | { link: true }>>;
type Change = readonly [from: string, to: string];

/**
 * One case of a rule. The sound files are changed piece by piece: in `file`, every `from` becomes `to`. The marks « and » in `to` stand
 * around the stretch that the rule must point at; a change without marks must be passed, or found in the file as a whole.
 */
export interface RuleCase {
  /** What is the matter, in a few words. */
  name: string;
  file: string;
  /** Pieces of the file's text and what takes their place. Each must occur. */
  change?: readonly Change[];
  /** The whole file instead. */
  text?: string | Uint8Array | { link: true };
  /** Other files that are there beside. */
  others?: Files;
  /** Files of the sound ones that are not there. */
  without?: readonly string[];
  /** Words that the message must have. */
  says?: string;
  nearest?: string;
  /** The whole file is at fault. */
  whole?: true;
  /** Also simulate and grade. */
  options?: Pick<ValidateOptions, "electrical">;
  /** Line and column of both ends, where a mark cannot be set: files that are no text. */
  at?: readonly [line: number, column: number, endLine: number, endColumn: number];
}

/**
 * Tests a rule with files that break it and with files that nearly do. Exactly the marked places must be told, each with line
 * and column of both ends.
 *
 * @param grader - for rules that need jobs or circuits
 */
export function testRule(rule: Rule, cases: { fires: readonly RuleCase[]; passes: readonly RuleCase[] }, grader?: Grader): void {
  it.each(cases.fires.map((one) => [one.name, one] as const))(`${rule.code} finds: %s`, (_name, one) => {
    const { found, places } = run(rule, one, grader);
    expect(found.map(placeOf)).toEqual(one.whole ? [{ file: one.file }] : one.at ? [placed(one.file, one.at)] : places);
    if (one.says !== undefined) expect(found[0]?.message).toContain(one.says);
    if (one.nearest !== undefined) expect(found[0]?.nearest).toBe(one.nearest);
  });
  it.each(cases.passes.map((one) => [one.name, one] as const))(`${rule.code} passes: %s`, (_name, one) => {
    expect(run(rule, one, grader).found).toEqual([]);
  });
}

function run(rule: Rule, one: RuleCase, grader?: Grader): { found: Diagnostic[]; places: object[] } {
  const marked = changed(one);
  const { text, places } = typeof marked === "string" ? takeMarks(one.file, marked) : { text: marked, places: [] };
  const kept = Object.fromEntries(Object.entries(SOUND_FILES).filter(([path]) => one.without?.includes(path) !== true));
  const result = validateFiles(memorySource({ ...kept, ...one.others, [one.file]: text }), {
    rules: [rule],
    ...(grader === undefined ? {} : { grader }),
    ...one.options,
  });
  expect(result.diagnostics.filter(({ code }) => code.startsWith("UC-9"))).toEqual([]);
  return { found: result.diagnostics.filter(({ code }) => code === rule.code), places };
}

function changed({ file, change = [], text }: RuleCase): string | Uint8Array | { link: true } {
  if (text !== undefined && typeof text !== "string") return text;
  let result: string = text ?? (SOUND_FILES as Readonly<Record<string, string>>)[file] ?? "";
  for (const [from, to] of change) {
    if (!result.includes(from)) throw new Error(`${file} has no ${from}`);
    result = result.replace(from, () => to);
  }
  return result;
}

/** Takes the marks out of a text and says where each stretch lies: 1-based, UTF-16 units, a byte order mark not counted. */
function takeMarks(file: string, marked: string): { text: string; places: object[] } {
  const places: object[] = [];
  let text = "";
  let open: [number, number] | undefined;
  for (const piece of marked.split(/([«»])/)) {
    const lines = text.replace(/^\ufeff/, "").split("\n");
    const at: [number, number] = [lines.length, (lines.at(-1)?.length ?? 0) + 1];
    if (piece === "«") open = at;
    else if (piece === "»" && open !== undefined) places.push({ file, line: open[0], column: open[1], endLine: at[0], endColumn: at[1] });
    else text += piece;
  }
  return { text, places };
}

function placeOf({ file, line, column, endLine, endColumn }: Diagnostic): object {
  return line === undefined ? { file } : { file, line, column, endLine, endColumn };
}

function placed(file: string, [line, column, endLine, endColumn]: NonNullable<RuleCase["at"]>): object {
  return { file, line, column, endLine, endColumn };
}
