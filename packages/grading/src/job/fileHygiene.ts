import type { Problems } from "./problems.ts";
import { type SourceText, sourceText } from "./sourceText.ts";

/** Largest file that is read, in bytes. A chassis of 2000 parts needs a fifth of it. */
const FILE_BYTES_LIMIT = 5_000_000;

/** What can be said of a file before it is parsed. Undefined when it is not worth parsing. */
export function readFileText(file: { name: string; text: string }, problems: Problems): SourceText | undefined {
  const { name, text } = file;
  // A UTF-16 unit takes one to three bytes in UTF-8, so most files need no counting.
  const bytes =
    text.length > FILE_BYTES_LIMIT ? text.length : text.length * 3 <= FILE_BYTES_LIMIT ? 0 : new TextEncoder().encode(text).length;
  if (bytes > FILE_BYTES_LIMIT) {
    problems.addToFile(name, {
      code: "file-too-large",
      message: "the file is too large for a job",
      received: `${(bytes / 1e6).toFixed(1)} MB or more`,
      expected: `at most ${FILE_BYTES_LIMIT / 1e6} MB`,
    });
    return undefined;
  }
  const source = sourceText(name, text);
  if (source.text.trim() === "") {
    problems.addToFile(name, { code: "file-empty", message: "the file is empty" });
    return undefined;
  }
  const nul = source.text.indexOf("\u0000");
  if (nul >= 0) {
    problems.add(
      { source, offset: nul, length: 1 },
      {
        code: "file-not-text",
        message: "the file holds a NUL character",
        expected: "text saved as UTF-8",
        help: "save it again as plain text, UTF-8; UTF-16 files and binary files look like this",
      },
    );
    return undefined;
  }
  return source;
}
