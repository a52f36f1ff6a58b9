import type { Problems } from "./problems.ts";
import type { ReadLimits } from "./readLimits.ts";
import { type SourceText, sourceText } from "./sourceText.ts";

/** What can be said of a file before it is parsed. Undefined when it is not worth parsing. */
export function readFileText(file: { name: string; text: string }, limits: ReadLimits, problems: Problems): SourceText | undefined {
  const { name, text } = file;
  // A UTF-16 unit takes one to three bytes in UTF-8, so most files need no counting.
  const bytes = text.length > limits.bytes ? text.length : text.length * 3 <= limits.bytes ? 0 : new TextEncoder().encode(text).length;
  if (bytes > limits.bytes) {
    problems.addToFile(name, {
      code: "file-too-large",
      message: `the file is too large for a ${limits.noun}`,
      received: `${(bytes / 1e6).toFixed(1)} MB or more`,
      expected: `at most ${limits.bytes / 1e6} MB`,
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
