import type { Problems } from "./problems.ts";
import type { ReadLimits } from "./readLimits.ts";
import type { SourceText } from "./sourceText.ts";

/** Looks through a table before it is parsed, so that one of commas alone cannot hold up the parser. */
export function withinCsvLimits(source: SourceText, limits: ReadLimits, problems: Problems): boolean {
  const { text } = source;
  let count = 0;
  for (let offset = 0; offset < text.length; offset++) {
    const code = text.charCodeAt(offset);
    if ((code === 44 || code === 10 || code === 13) && ++count > limits.marks) {
      problems.add(
        { source, offset, length: 1 },
        {
          code: "file-too-large",
          message: `the table holds too many cells for a ${limits.noun}`,
          expected: `at most ${limits.marks} commas and line ends`,
        },
      );
      return false;
    }
  }
  return true;
}
