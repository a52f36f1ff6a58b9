import { nearestOf, oneOf, recordOf } from "@underchassis/source-text";
import { NEEDED_PINS, PIN_SYNONYMS, PINS } from "../../model/pins.ts";
import { pathWords } from "../pathWords.ts";
import { isDoubtful, type ReferenceContext, report } from "./context.ts";

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
    const synonym = PIN_SYNONYMS[pin];
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
  const sets = NEEDED_PINS[kind];
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
