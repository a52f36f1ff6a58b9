import type { StageTemplate } from "@underchassis/dataset";
import { NEEDED_PINS, PIN_SYNONYMS, PINS } from "@underchassis/grading";
import { nearestOf, oneOf } from "@underchassis/source-text";
import type { Complaint, RecordRule } from "../../model/rule.ts";
import { gather, nothing } from "../../shared/gather.ts";

type Part = StageTemplate["parts"][number];

/** What a template may name beyond what is simulated: the target of a tuning eye, which a load draws on. */
const ALSO: Readonly<Record<string, readonly string[]>> = { tube: ["target"] };

const KNOWN: ReadonlyMap<string, readonly string[]> = new Map(
  Object.entries(PINS).map(([kind, pins]) => [kind, [...pins, ...(ALSO[kind] ?? [])]]),
);

/** The pins of a part are electrodes that the simulation knows. */
export const electrodeKnown: RecordRule = {
  code: "UC-427",
  name: "electrode-known",
  scope: "record",
  severity: "error",
  title: "The pins of a tube, rectifier, potentiometer or cord are ones that its kind has, and none lacks without which no current flows",
  why: "A misspelt electrode is wired to nothing: the tube is simulated with its grid in the air.",
  bad: '"kind": "tube", "pins": { "anode": "plate", "grd": "input", "cathode": "cathode" }',
  good: '"kind": "tube", "pins": { "plate": "plate", "grid": "input", "cathode": "cathode" }',
  kinds: ["stage"],
  check: (record) =>
    gather((record.value as StageTemplate).parts, (part, index) => {
      const { kind, pins } = part;
      const known = pins === undefined ? undefined : KNOWN.get(kind);
      if (pins === undefined || known === undefined) return nothing();
      const names = Object.keys(pins);
      const unknown = names.filter((name) => !known.includes(name));
      return unknown.length > 0 ? unknown.map((name) => strange(name, kind, known, index)) : lacking(part, names, index);
    }),
};

function strange(name: string, kind: string, known: readonly string[], index: number): Complaint {
  const synonym = PIN_SYNONYMS[name];
  return {
    at: { path: ["parts", index, "pins", name], part: "key" },
    message: `a ${kind} has no pin "${name}" here`,
    received: name,
    expected: oneOf(known),
    nearest: synonym !== undefined && known.includes(synonym) ? synonym : nearestOf(name, known),
  };
}

function lacking({ kind, between }: Part, names: readonly string[], index: number): Complaint[] {
  const sets = NEEDED_PINS[kind];
  if (sets === undefined || between !== undefined || sets.some((set) => set.every((name) => names.includes(name)))) return [];
  return [
    {
      at: { path: ["parts", index, "pins"], part: "key" },
      message: `a ${kind} that lacks a pin, so that no current can flow through it`,
      received: names.join(", "),
      expected: sets.map((set) => set.join(" and ")).join(", or "),
    },
  ];
}
