import { SOUND_JOB } from "../../packages/grading/src/job/fixtures.ts";

/**
 * One bad (or odd but sound) job. Its files carry marks, `«code»` or `«code: words of the message»`, each right before the
 * character at which that diagnostic must point; the marks are taken out before the reader sees the text. The diagnostics must
 * be exactly the marked ones.
 */
export interface AbuseCase {
  name: string;
  /** Default: the sound job. */
  job?: string;
  parts?: string;
  readings?: string;
  /** Diagnostics of a file as a whole. */
  whole?: readonly { file: string; code: string }[];
}

/** The sound job with pieces of its text replaced. Every piece must occur, and only its first occurrence changes. */
export function edited(...changes: readonly (readonly [string, string])[]): string {
  let text = SOUND_JOB;
  for (const [from, to] of changes) {
    if (!text.includes(from)) throw new Error(`the sound job has no ${from}`);
    text = text.replace(from, () => to);
  }
  return text;
}

export interface Mark {
  file: string;
  code: string;
  fragment: string;
  line: number;
  column: number;
}

/** Takes the marks out of a text and says where each stood: 1-based, columns in UTF-16 units, a byte order mark not counted. */
export function takeMarks(file: string, marked: string): { text: string; marks: Mark[] } {
  const marks: Mark[] = [];
  let text = "";
  for (const [index, piece] of marked.split(/«([^»]*)»/).entries()) {
    if (index % 2 === 0) {
      text += piece;
      continue;
    }
    const lines = text.replace(/^\uFEFF/, "").split(/\r\n|\n|\r/);
    const [code = "", ...fragment] = piece.split(": ");
    marks.push({ file, code, fragment: fragment.join(": "), line: lines.length, column: lines[lines.length - 1]!.length + 1 });
  }
  return { text, marks };
}
