import { roles, type SubstituteContext, type Substitution, substituteMarking } from "@underchassis/calc";
import { type Command, Option } from "commander";
import { InputError } from "../inputError.ts";
import { findRectifier } from "../markings/findRectifier.ts";
import { readEra, readingError, readOption } from "../markings/readingError.ts";
import { renderSubstitution } from "../markings/renderSubstitution.ts";
import { EXIT, type Terminal } from "../terminal.ts";

const FORMATS = ["text", "json"] as const;

interface SubstituteOptions {
  format: (typeof FORMATS)[number];
  role?: string;
  era?: string;
  gridLeak?: string;
  cathodeResistor?: string;
  rectifier?: string;
  working?: string;
  line?: string;
  frequency?: string;
  earthed?: boolean;
}

const roleList = (): string => roles.map(({ id, title }) => `  ${id.padEnd(17)}${title}`).join("\n");

async function contextOf(options: SubstituteOptions): Promise<SubstituteContext> {
  const { era, gridLeak, cathodeResistor, rectifier, working, line, frequency, earthed } = options;
  return {
    ...(era === undefined ? {} : { era: readEra(era) }),
    ...(gridLeak === undefined ? {} : { gridLeakOhms: readOption("--grid-leak", gridLeak, "resistance") }),
    ...(cathodeResistor === undefined ? {} : { cathodeOhms: readOption("--cathode-resistor", cathodeResistor, "resistance") }),
    ...(working === undefined ? {} : { workingVolts: readOption("--working", working, "voltage") }),
    ...(line === undefined ? {} : { lineVolts: readOption("--line", line, "voltage") }),
    ...(frequency === undefined ? {} : { lineHertz: readOption("--frequency", frequency, "frequency") }),
    ...(earthed === undefined ? {} : { earthed }),
    ...(rectifier === undefined ? {} : { rectifier: await findRectifier(rectifier) }),
  };
}

function render(title: string, sheets: readonly Substitution[], terminal: Terminal): string {
  const blocks = sheets.map((sheet, place) => {
    const section = sheets.length > 1 ? `section ${place + 1}\n` : "";
    return `${section}${renderSubstitution(sheet, terminal.columns)}`;
  });
  return `${[title, ...blocks].join("\n\n")}\n`;
}

/** Prints what may replace a part in its place. @returns exit code */
async function substitute(words: readonly string[], options: SubstituteOptions, terminal: Terminal): Promise<number> {
  const marking = words.join(" ");
  const { role } = options;
  if (role === undefined)
    throw new InputError(
      "--role",
      "where does the part sit?",
      `it takes one of ${roles.map(({ id }) => id).join(", ")}; --help says what each is`,
    );
  const context = await contextOf(options);
  const sheets = substituteMarking(marking, role, context).map((result) => {
    if (result.ok) return result.value;
    throw readingError(roles.some(({ id }) => id === role) ? "marking" : "--role", result.problem);
  });
  if (options.format === "json") terminal.out(`${JSON.stringify({ asWritten: marking, role, context, sections: sheets }, null, 2)}\n`);
  else terminal.out(render(`${marking}: ${roles.find(({ id }) => id === role)?.title}`, sheets, terminal));
  return EXIT.done;
}

/** Adds the arguments of `underchassis substitute`. */
export function define(command: Command, terminal: Terminal, finish: (exitCode: number) => void): void {
  command
    .argument("<marking...>", 'as it stands on the old part: ".05 600V paper", "20-20/450", "50k 1/2W"')
    .option("-r, --role <role>", "where the part sits")
    .option("-e, --era <year>", "year the part was made, roughly")
    .option("--rectifier <tube>", "rectifier in front of a reservoir: 5Y3GT")
    .option("--grid-leak <ohms>", "grid resistor behind a coupling capacitor: 470k")
    .option("--cathode-resistor <ohms>", "resistor under a cathode bypass: 1k5")
    .option("--working <volts>", "worst case across the part: cold tubes, highest line, ripple peak")
    .option("--line <volts>", "nominal line voltage (120 V when not given)")
    .option("--frequency <hertz>", "line frequency (60 Hz when not given)")
    .option("--earthed", "the chassis has protective earth through a three-wire cord")
    .addOption(new Option("-f, --format <format>", "how to print it").choices(FORMATS).default("text"))
    .addHelpText("after", () => `\nRoles:\n${roleList()}`)
    .action(async (words: string[], options: SubstituteOptions) => finish(await substitute(words, options, terminal)));
}
