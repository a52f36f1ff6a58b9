import { visible } from "../../packages/report/src/clean/visible.ts";
import { escapeMarkdown } from "../../packages/report/src/markdown/escapeMarkdown.ts";
import { tableBlock } from "../../packages/report/src/markdown/markdownBlocks.ts";
import { textTable } from "../../packages/report/src/text/textTable.ts";
import type { Comparison } from "./compare.ts";
import { alikeSentence, CHANGE_HEAD, changeCells, jobLines, jobsToShow, jobTitle, versionSentence } from "./words.ts";

/** More rows than this no page shows; the JSON has all. */
const MOST_ROWS = 200;

const rowsOf = ({ changes }: Comparison): string[][] => changes.slice(0, MOST_ROWS).map((change) => changeCells(change).map(visible));
const surplus = ({ changes }: Comparison): string[] =>
  changes.length > MOST_ROWS ? [`${changes.length - MOST_ROWS} more changes: see --format json`] : [];

const listOf = (text: string | undefined): string[] => (text === undefined ? [] : [text]);

/** A comparison for a terminal. Every text is made visible: the dataset may come from a stranger. */
export function renderComparisonText(comparison: Comparison, width = 120): string {
  const rows = rowsOf(comparison);
  const lines = [
    visible(versionSentence(comparison)),
    "",
    ...(rows.length === 0 ? ["No record differs."] : textTable({ head: CHANGE_HEAD, rows }, width)),
    ...surplus(comparison),
    "",
    ...(comparison.jobsNotGraded === undefined ? [] : [`Recorded jobs were not graded with both: ${visible(comparison.jobsNotGraded)}`]),
    ...jobsToShow(comparison).flatMap((job) => [visible(jobTitle(job)), ...jobLines(job).map((line) => `  ${visible(line)}`)]),
    ...listOf(alikeSentence(comparison)),
  ];
  return `${lines.join("\n")}\n`;
}

/** The same for the summary of a job on GitHub. */
export function renderComparisonMarkdown(comparison: Comparison): string {
  const line = (text: string): string => escapeMarkdown(visible(text));
  const blocks = [
    "## Reference against the base",
    `${comparison.raisedEnough ? "" : "**"}${line(versionSentence(comparison))}${comparison.raisedEnough ? "" : "**"}`,
    "### Records",
    tableBlock({ head: CHANGE_HEAD, rows: rowsOf(comparison) }, "No record differs."),
    ...surplus(comparison),
    "### Recorded jobs",
    ...(comparison.jobsNotGraded === undefined ? [] : [`Not graded with both: ${line(comparison.jobsNotGraded)}`]),
    ...jobsToShow(comparison).map((job) => [`- ${line(jobTitle(job))}`, ...jobLines(job).map((text) => `  - ${line(text)}`)].join("\n")),
    ...listOf(alikeSentence(comparison)),
  ];
  return `${blocks.join("\n\n")}\n`;
}
