import type { Problems } from "./problems.ts";
import type { SourceText } from "./sourceText.ts";

/** Most commas and line ends that a table may hold: four times what 2000 rows of 25 columns take. */
const LIMIT = 200_000;

/** Looks through a table before it is parsed, so that one of commas alone cannot hold up the parser. */
export function withinCsvLimits(source: SourceText, problems: Problems): boolean {
  const { text } = source;
  let count = 0;
  for (let offset = 0; offset < text.length; offset++) {
    const code = text.charCodeAt(offset);
    if ((code === 44 || code === 10 || code === 13) && ++count > LIMIT) {
      problems.add(
        { source, offset, length: 1 },
        { code: "file-too-large", message: "the table holds too many cells for a job", expected: `at most ${LIMIT} commas and line ends` },
      );
      return false;
    }
  }
  return true;
}
