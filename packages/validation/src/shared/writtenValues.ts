import { type Dimension, type MarkedKind, parseMarking, parseQuantity, type ReadingProblem } from "@underchassis/calc";
import { SETTING_DIMENSION, type StageTemplate } from "@underchassis/dataset";
import type { Path } from "@underchassis/source-text";
import type { RecordFile } from "../model/subjects.ts";
import { hasOldSpelling } from "./oldSpellings.ts";

/** How a text must be readable: as a marking of a kind of part, or as one quantity. */
export type ReadAs = { marking: MarkedKind; electrolytic: boolean } | { quantity: Dimension };

/** A value as it would stand on a part, and what it must be readable as. */
export interface WrittenValue {
  text: string;
  path: Path;
  as: ReadAs;
  /** Worked out when a rule first asks for it. */
  facts?: ValueFacts;
}

// One object for each way of reading: what was read is kept under it.
const marking = (kind: MarkedKind, electrolytic = false): ReadAs => ({ marking: kind, electrolytic });
const VOLTAGE: ReadAs = { quantity: "voltage" };
const RESISTANCE = marking("resistor");
const FUSE = marking("fuse");
const LOAD = marking("load");
const WINDING = marking("transformer-winding");
const ELECTROLYTIC = marking("capacitor", true);

const MARKED: Readonly<Record<string, ReadAs>> = {
  resistor: RESISTANCE,
  potentiometer: RESISTANCE,
  capacitor: marking("capacitor"),
  inductor: marking("inductor"),
  fuse: FUSE,
  breaker: FUSE,
  // A switch's marking is its contact rating: 3 A 250 V.
  switch: FUSE,
  thermistor: marking("thermistor"),
  lamp: marking("lamp"),
  load: LOAD,
  battery: VOLTAGE,
};

const SURROUND: Readonly<Record<string, ReadAs>> = {
  load: LOAD,
  resistor: RESISTANCE,
  battery: VOLTAGE,
  "ac-source": VOLTAGE,
};

/** By name, since a record that breaks its schema may hold any. */
const SETTING: Readonly<Record<string, ReadAs>> = Object.fromEntries(
  Object.entries(SETTING_DIMENSION).map(([unit, quantity]) => [unit, { quantity }]),
);

/** Every value of a template that is written as people write it; gathered once for all rules. */
export function writtenValues({ memo, value }: RecordFile): readonly WrittenValue[] {
  memo.values ??= valuesOf(value as StageTemplate);
  return memo.values;
}

/** Every value of a template that is written as people write it. */
export function valuesOf({ parts, typical, settings }: StageTemplate): WrittenValue[] {
  const values: WrittenValue[] = [];
  for (let index = 0; index < parts.length; index++) {
    const { kind, typical: text, polarised, windings } = parts[index]!;
    if (text !== undefined) {
      const as = polarised === true && kind === "capacitor" ? ELECTROLYTIC : MARKED[kind];
      if (as !== undefined) values.push({ text, path: ["parts", index, "typical"], as });
    }
    for (const name in windings)
      values.push({ text: windings[name]!.typical, path: ["parts", index, "windings", name, "typical"], as: WINDING });
  }
  const surround = typical?.parts ?? [];
  for (let index = 0; index < surround.length; index++) {
    const { kind, value: text } = surround[index]!;
    const as = SURROUND[kind];
    if (as !== undefined) values.push({ text, path: ["typical", "parts", index, "value"], as });
  }
  if (typical?.line !== undefined) values.push({ text: typical.line.designVolts, path: ["typical", "line", "designVolts"], as: VOLTAGE });
  for (const name in settings) {
    const { unit, typical: text } = settings[name]!;
    const as = SETTING[unit];
    if (as !== undefined) values.push({ text, path: ["settings", name, "typical"], as });
  }
  return values;
}

/** What keeps a text from being read; undefined when nothing does. */
type Read = ReadingProblem | "no-value" | undefined;

/** What is known of a text, taken as it must be readable. */
interface ValueFacts {
  problem: Read;
  /** It may have an old spelling of a unit in it. */
  old: boolean;
  /** Of a marking: its value to a tenth or so, in SI, and whether it says a voltage. */
  marked?: { value: number; rated: boolean };
}

/** Templates of a family repeat each other's values; these are read once for each way of reading. */
const known = new Map<ReadAs, Map<string, ValueFacts>>();
const KEPT = 2000;
const BEHIND_POINT = /\b([1-9]\d{0,3})\.\d{1,12}\b/g;

/** What there is to say of a written value. */
export function factsOf(written: WrittenValue): ValueFacts {
  written.facts ??= lookedUp(written);
  return written.facts;
}

function lookedUp({ text, as }: WrittenValue): ValueFacts {
  let read = known.get(as);
  if (read === undefined) {
    read = new Map();
    known.set(as, read);
  }
  // Neither whether it can be read nor how its units are spelt hangs on the figures behind a point.
  const shape = text.includes(".") ? text.replace(BEHIND_POINT, "$1.5") : text;
  const same = read.get(shape);
  if (same !== undefined) return same;
  const facts = factsOfText(shape, as);
  // What is wrong is told of the text as it is written.
  if (facts.problem !== undefined) return shape === text ? facts : factsOfText(text, as);
  if (read.size >= KEPT) read.clear();
  read.set(shape, facts);
  return facts;
}

function factsOfText(text: string, as: ReadAs): ValueFacts {
  const old = hasOldSpelling(text);
  if ("quantity" in as) {
    const result = parseQuantity(text, as.quantity);
    return { problem: result.ok ? undefined : result.problem, old };
  }
  const result = parseMarking(text, as.marking, as.electrolytic ? { electrolytic: true } : {});
  if (!result.ok) return { problem: result.problem, old };
  const { value, ohms, ratedVolts } = result.value;
  if (value === undefined && ohms === undefined && as.marking !== "lamp") return { problem: "no-value", old };
  return { problem: undefined, old, ...(value === undefined ? {} : { marked: { value, rated: ratedVolts !== undefined } }) };
}
