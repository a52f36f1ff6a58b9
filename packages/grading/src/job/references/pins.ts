import { nearestOf, oneOf, recordOf } from "@underchassis/source-text";
import { pathWords } from "../pathWords.ts";
import { isDoubtful, type ReferenceContext, report } from "./context.ts";

/** The pins that the simulation knows, by kind; a suppressor is taken to lie on its cathode. Other kinds have two leads, a and b. */
const PINS: Readonly<Record<string, readonly string[]>> = {
  tube: ["plate", "screen", "grid", "cathode", "suppressor"],
  rectifier: ["plate", "plate-1", "plate-2", "cathode", "a", "b"],
  "regulator-tube": ["anode", "cathode", "a", "b"],
  zener: ["anode", "cathode", "a", "b"],
  potentiometer: ["a", "wiper", "b"],
  cord: ["hot-in", "hot-out", "neutral-in", "neutral-out", "earth-in", "earth-out"],
};

/** Sets of pins of which one must be whole, or the part would lie nowhere in the network. */
const NEEDED: Readonly<Record<string, readonly (readonly string[])[]>> = {
  tube: [["plate", "cathode"]],
  rectifier: [
    ["plate", "cathode"],
    ["plate-1", "cathode"],
    ["plate-2", "cathode"],
    ["a", "b"],
  ],
  "regulator-tube": [
    ["anode", "cathode"],
    ["a", "b"],
  ],
};

/** Other words of the trade for the same electrode (common-practice). */
const SYNONYMS: Readonly<Record<string, string>> = {
  anode: "plate",
  "anode-1": "plate-1",
  "anode-2": "plate-2",
  plate: "anode",
  filament: "cathode",
  k: "cathode",
  p: "plate",
  a1: "plate-1",
  a2: "plate-2",
  g: "grid",
  g1: "grid",
  g2: "screen",
  g3: "suppressor",
};

/** Whether every pin that a part beyond the templates names is one that a part of this kind has, and whether those that it cannot do without are there. */
export function checkPins(context: ReferenceContext): void {
  for (const part of context.survey.parts) {
    if (part.kind === undefined || part.path === undefined || part.template !== undefined) continue;
    const { path, written, kind } = part;
    const unknown = [
      ...unknownPins(context, kind, [...path, "pins"], written.pins),
      ...unknownPins(context, kind, [...path, "foundPins"], written.foundPins),
      ...unknownPins(context, kind, [...path, "fitted", "pins"], recordOf(written.fitted).pins),
    ];
    // A misspelt pin may be the very one that would be missed.
    if (unknown.length === 0) checkNeeded(context, kind, path, written);
  }
}

function unknownPins(context: ReferenceContext, kind: string, path: (string | number)[], written: unknown): string[] {
  const known = PINS[kind] ?? ["a", "b"];
  const unknown = Object.keys(recordOf(written)).filter((pin) => !known.includes(pin));
  for (const pin of unknown) {
    const synonym = SYNONYMS[pin];
    report(
      context,
      [...path, pin],
      {
        code: "pin-unknown",
        message: `a ${kind} has no pin "${pin}" here`,
        received: pin,
        expected: oneOf(known),
        nearest: () => (synonym !== undefined && known.includes(synonym) ? synonym : nearestOf(pin, known)),
      },
      "key",
    );
  }
  return unknown;
}

function checkNeeded(
  context: ReferenceContext,
  kind: string,
  path: readonly (string | number)[],
  written: Readonly<Record<string, unknown>>,
): void {
  const sets = NEEDED[kind];
  const pins = Object.keys(recordOf(written.pins));
  if (sets === undefined || pins.length === 0 || written.between !== undefined || isDoubtful(context, String(written.name))) return;
  if (sets.some((set) => set.every((pin) => pins.includes(pin)))) return;
  report(
    context,
    [...path, "pins"],
    {
      code: "pins-missing",
      message: `${pathWords([...path], context.job.value)} (${kind}) lacks a pin, so no current could flow through it`,
      received: pins.join(", "),
      expected: sets.map((set) => set.map((pin) => `"${pin}"`).join(" and ")).join(", or "),
    },
    "key",
  );
}
