import { type Dimension, type MarkedKind, parseMarking, parseQuantity, type ReadingProblem } from "@underchassis/calc";
import { SETTING_DIMENSION, type StageTemplate } from "@underchassis/dataset";
import type { Path } from "@underchassis/source-text";

/** How a text must be readable: as a marking of a kind of part, or as one quantity. */
export type ReadAs = { marking: MarkedKind; electrolytic: boolean } | { quantity: Dimension };

/** A value as it would stand on a part, and what it must be readable as. */
export interface WrittenValue {
  text: string;
  path: Path;
  as: ReadAs;
}

const MARKED: Readonly<Record<string, MarkedKind>> = {
  resistor: "resistor",
  potentiometer: "resistor",
  capacitor: "capacitor",
  inductor: "inductor",
  fuse: "fuse",
  breaker: "fuse",
  // A switch's marking is its contact rating: 3 A 250 V.
  switch: "fuse",
  thermistor: "thermistor",
  lamp: "lamp",
  load: "load",
};

const SURROUND: Readonly<Record<string, ReadAs>> = {
  load: { marking: "load", electrolytic: false },
  resistor: { marking: "resistor", electrolytic: false },
  battery: { quantity: "voltage" },
  "ac-source": { quantity: "voltage" },
};

/** By name, since a record that breaks its schema may hold any. */
const SETTING: Readonly<Record<string, Dimension>> = SETTING_DIMENSION;

const kept = new WeakMap<StageTemplate, readonly WrittenValue[]>();

/** Every value of a template that is written as people write it. */
export function writtenValues(template: StageTemplate): readonly WrittenValue[] {
  let values = kept.get(template);
  if (values === undefined) {
    values = gathered(template);
    kept.set(template, values);
  }
  return values;
}

function gathered({ parts, typical, settings }: StageTemplate): WrittenValue[] {
  const values: WrittenValue[] = [];
  for (const [index, part] of parts.entries()) {
    const path = ["parts", index];
    const marking = MARKED[part.kind];
    if (part.typical !== undefined) {
      const text = part.typical;
      if (marking !== undefined) values.push({ text, path: [...path, "typical"], as: { marking, electrolytic: part.polarised === true } });
      else if (part.kind === "battery") values.push({ text, path: [...path, "typical"], as: { quantity: "voltage" } });
    }
    for (const [name, winding] of Object.entries(part.windings ?? {}))
      values.push({
        text: winding.typical,
        path: [...path, "windings", name, "typical"],
        as: { marking: "transformer-winding", electrolytic: false },
      });
  }
  for (const [index, { kind, value }] of (typical?.parts ?? []).entries()) {
    const as = SURROUND[kind];
    if (as !== undefined) values.push({ text: value, path: ["typical", "parts", index, "value"], as });
  }
  if (typical?.line !== undefined)
    values.push({ text: typical.line.designVolts, path: ["typical", "line", "designVolts"], as: { quantity: "voltage" } });
  for (const [name, { unit, typical: text }] of Object.entries(settings ?? {})) {
    const quantity = SETTING[unit];
    if (quantity !== undefined) values.push({ text, path: ["settings", name, "typical"], as: { quantity } });
  }
  return values;
}

type Read = ReadingProblem | "no-value" | undefined;

/** Templates of a family repeat each other's values; these are read once. */
const known = new Map<string, Read>();
const KEPT = 5000;

/** What keeps a text from being read; undefined when nothing does. */
export function readingProblem(text: string, as: ReadAs): Read {
  const kind = "marking" in as ? `${as.marking} ${as.electrolytic}` : as.quantity;
  // Whether it can be read does not hang on the figures behind a point.
  const shape = text.replace(/\b([1-9]\d{0,3})\.\d{1,12}\b/g, "$1.5");
  const key = `${kind}\u0000${shape}`;
  if (known.has(key)) return known.get(key);
  const problem = read(shape, as);
  // What is wrong is told of the text as it is written.
  if (problem !== undefined) return shape === text ? problem : read(text, as);
  if (known.size >= KEPT) known.clear();
  known.set(key, problem);
  return problem;
}

function read(text: string, as: ReadAs): Read {
  if ("quantity" in as) {
    const result = parseQuantity(text, as.quantity);
    return result.ok ? undefined : result.problem;
  }
  const result = parseMarking(text, as.marking, as.electrolytic ? { electrolytic: true } : {});
  if (!result.ok) return result.problem;
  const { value, ohms } = result.value;
  return value === undefined && ohms === undefined && as.marking !== "lamp" ? "no-value" : undefined;
}
