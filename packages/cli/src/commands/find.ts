import { documentsOf, FIND_KINDS, type FindKind, findIndex } from "@underchassis/dataset";
import { loadDataset } from "@underchassis/dataset/load";
import { checkDocuments } from "@underchassis/grading";
import { renderFound } from "@underchassis/report";
import { type Command, InvalidArgumentError, Option } from "commander";
import { nearestWords } from "../find/nearestWords.ts";
import { InputError } from "../inputError.ts";
import { EXIT, printable, type Terminal } from "../terminal.ts";

const FORMATS = ["text", "json"] as const;
const LONGEST_QUESTION = 500;
const MOST_HITS = 1000;

interface FindCommandOptions {
  format: (typeof FORMATS)[number];
  kind?: FindKind[];
  top: number;
}

function readTop(text: string): number {
  const top = Number(text);
  if (!Number.isInteger(top) || top < 1 || top > MOST_HITS)
    throw new InvalidArgumentError(`it takes a whole number from 1 to ${MOST_HITS}.`);
  return top;
}

/** Looks a question up in the shared reference and prints what answers it. @returns exit code */
function find(words: readonly string[], { format, kind: kinds = [], top }: FindCommandOptions, terminal: Terminal): number {
  const question = words.join(" ").trim();
  if (question === "" || question.length > LONGEST_QUESTION)
    throw new InputError(
      "find",
      question === "" ? "what is looked for?" : `a question holds at most ${LONGEST_QUESTION} characters`,
      'an id, or words as one says them at the bench: underchassis find "low B+ loud hum"',
    );
  const index = findIndex([...documentsOf(loadDataset(undefined, { rows: false })), ...checkDocuments()]);
  const hits = index.find(question, { kinds, top });
  const nearest = hits.length > 0 ? [] : nearestWords(question, index.words());
  if (format === "json") terminal.out(`${JSON.stringify({ question, kinds, hits, nearest }, null, 2)}\n`);
  else if (hits.length > 0) terminal.out(renderFound(hits, { ...(terminal.columns === undefined ? {} : { width: terminal.columns }) }));
  else {
    const among = kinds.length === 0 ? "" : ` among ${kinds.join(", ")}`;
    terminal.err(`nothing found for "${printable(question)}"${among}\n`);
    if (nearest.length > 0) terminal.err(`  nearest words: ${nearest.map(printable).join(", ")}\n`);
  }
  return hits.length > 0 ? EXIT.done : EXIT.nothing;
}

/** Adds the arguments of `underchassis find`. */
export function define(command: Command, terminal: Terminal, finish: (exitCode: number) => void): void {
  command
    .argument("<words...>", "an id, a tube type, or words as one says them at the bench: low B+ loud hum")
    .addOption(new Option("-f, --format <format>", "how to print it").choices(FORMATS).default("text"))
    .addOption(new Option("-k, --kind <kind...>", "look at these kinds only").choices(FIND_KINDS))
    .option("-n, --top <number>", "print at most so many", readTop, 10)
    .action((words: string[], options: FindCommandOptions) => finish(find(words, options, terminal)));
}
