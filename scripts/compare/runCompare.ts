import { parseArgs } from "node:util";
import { visible } from "../../packages/report/src/clean/visible.ts";
import { compareWith } from "./compare.ts";
import { RevisionError } from "./git.ts";
import { RecordError } from "./readRecords.ts";
import { renderComparisonMarkdown, renderComparisonText } from "./render.ts";

const FORMATS = ["text", "json", "markdown"];
const USAGE = `npm run compare -- REVISION [--format ${FORMATS.join("|")}]`;

export interface Ran {
  exitCode: 0 | 1 | 2;
  out: string;
  err: string;
}

const failed = (message: string): Ran => ({ exitCode: 2, out: "", err: `${visible(message)}\n` });

/**
 * The whole command, without touching the process.
 *
 * @param root the repository's folder
 * @param columns width of the terminal, where there is one
 */
export function runCompare(args: readonly string[], root: string, columns?: number): Ran {
  let given: { values: { format?: string }; positionals: string[] };
  try {
    given = parseArgs({ args: [...args], allowPositionals: true, options: { format: { type: "string", short: "f" } } });
  } catch (error) {
    return failed(`${error instanceof Error ? error.message : error}; ${USAGE}`);
  }
  const {
    positionals,
    values: { format = "text" },
  } = given;
  const [revision] = positionals;
  if (revision === undefined || positionals.length > 1) return failed(`one revision is needed: ${USAGE}`);
  if (!FORMATS.includes(format)) return failed(`there is no format "${format}"; there are ${FORMATS.join(", ")}`);
  try {
    const comparison = compareWith(root, revision);
    const out =
      format === "json"
        ? `${JSON.stringify(comparison, null, 2)}\n`
        : format === "markdown"
          ? renderComparisonMarkdown(comparison)
          : renderComparisonText(comparison, columns);
    return { exitCode: comparison.raisedEnough ? 0 : 1, out, err: "" };
  } catch (error) {
    if (error instanceof RevisionError || error instanceof RecordError) return failed(error.message);
    throw error;
  }
}
