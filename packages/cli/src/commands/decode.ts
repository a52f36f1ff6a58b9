import { type DecodeContext, decode as decodeMarking, type MarkingFamily, markingFamilies } from "@underchassis/calc";
import { type Command, Option } from "commander";
import { readEra, readingError } from "../markings/readingError.ts";
import { renderDecoded } from "../markings/renderDecoded.ts";
import { EXIT, type Terminal } from "../terminal.ts";

const FORMATS = ["text", "json"] as const;
const KINDS = ["resistor", "capacitor"] as const;

interface DecodeOptions {
  format: (typeof FORMATS)[number];
  era?: string;
  kind?: (typeof KINDS)[number];
  family?: MarkingFamily;
}

/** Prints every reading of a marking. @returns exit code */
function decode(words: readonly string[], options: DecodeOptions, terminal: Terminal): number {
  const { kind, family } = options;
  const context: DecodeContext = {
    ...(options.era === undefined ? {} : { era: readEra(options.era) }),
    ...(kind ? { kind } : {}),
    ...(family ? { family } : {}),
  };
  const decoded = decodeMarking(words.join(" "), context);
  if (!decoded.ok) throw readingError("marking", decoded.problem);
  if (options.format === "json") terminal.out(`${JSON.stringify({ ...decoded.value, context }, null, 2)}\n`);
  else terminal.out(renderDecoded(decoded.value, terminal.columns));
  return EXIT.done;
}

/** Adds the arguments of `underchassis decode`. */
export function define(command: Command, terminal: Terminal, finish: (exitCode: number) => void): void {
  command
    .argument(
      "<marking...>",
      'as it stands on the part: yellow violet orange silver, 4k7, .05/600, 104K, "body red, end green, dot orange"',
    )
    .option("-e, --era <year>", "year the part was made, roughly: leaves out the codes of other times")
    .addOption(new Option("-k, --kind <kind>", "what the part is (default: both are tried)").choices(KINDS))
    .addOption(new Option("--family <code>", "the code it is written in (default: all are tried)").choices(markingFamilies))
    .addOption(new Option("-f, --format <format>", "how to print it").choices(FORMATS).default("text"))
    .action((words: string[], options: DecodeOptions) => finish(decode(words, options, terminal)));
}
