/** Where a command speaks to. */
export interface Terminal {
  out(text: string): void;
  err(text: string): void;
  /** Whether each stream shows colours. */
  colour: { out: boolean; err: boolean };
  /** Width of the output in columns; undefined when it goes to a file or a pipe. */
  columns: number | undefined;
}

/** Exit codes of every command. */
export const EXIT = {
  /** Done, and nothing found that forbids energising. */
  done: 0,
  /** Done, and at least one finding says `danger`. */
  danger: 1,
  /** Done, and what was looked for is not there. */
  nothing: 1,
  /** Not done: bad arguments, an input that cannot be used, or an internal error. */
  failed: 2,
} as const;

/** A text from outside (file names, values) with its control characters shown instead of obeyed by the terminal. */
export function printable(text: string): string {
  // biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what this looks for
  return text.replace(/[\u0000-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069]/g, (character) => {
    return `\\u${character.charCodeAt(0).toString(16).padStart(4, "0")}`;
  });
}
