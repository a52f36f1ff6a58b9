import { READING_UNIT } from "@underchassis/dataset";
import { predictReading, type Verdict, verdictOf } from "../../grade/readingLines.ts";
import type { ChassisModel, Life, Prediction, Reading, ReadingQuantity, Stage } from "../../model/index.ts";
import { allIn, endsOf } from "./layout.ts";
import { withUnit } from "./phrases.ts";

export interface JudgedReading {
  reading: Reading;
  prediction: Prediction | undefined;
  verdict: Verdict;
}

const kept = new WeakMap<ChassisModel, readonly JudgedReading[]>();

/** Every reading with its prediction and verdict, in the job's order; worked out once a chassis. */
function judgedReadings(model: ChassisModel): readonly JudgedReading[] {
  const known = kept.get(model);
  if (known !== undefined) return known;
  const judged = model.readings.map((reading) => {
    const prediction = predictReading(model, reading);
    return { reading, prediction, verdict: verdictOf(reading, prediction) };
  });
  kept.set(model, judged);
  return judged;
}

/** Readings that still say something of the chassis as it stands: one taken before the work counts until it is taken again. */
export function standingReadings(model: ChassisModel): readonly JudgedReading[] {
  const again = new Set(model.readings.filter(({ life }) => life === "restored").map(keyOf));
  return judgedReadings(model).filter(({ reading }) => reading.life === "restored" || !again.has(keyOf(reading)));
}

export function keyOf({ at, to, quantity, condition }: Pick<Reading, "at" | "to" | "quantity" | "condition">): string {
  return [at, to, quantity, condition].join("\u0000");
}

/** The newest reading of a quantity at a point: after the work when there is one. */
export function latestReading(
  model: ChassisModel,
  at: string,
  to: string,
  quantity: ReadingQuantity,
  condition: string,
): Reading | undefined {
  const wanted = keyOf({ at, to, quantity, condition });
  const all = model.readings.filter((reading) => keyOf(reading) === wanted);
  return all.findLast(({ life }) => life === "restored") ?? all.at(-1);
}

const QUANTITY_WORDS: Readonly<Record<ReadingQuantity, string>> = {
  "dc-volts": "DC",
  "ac-volts": "AC",
  "ripple-volts": "ripple, peak to peak",
  ohms: "resistance",
  "dc-amps": "DC",
  "ac-amps": "AC",
};

/** A value with its unit as a reading of that quantity is written; an infinite resistance is open. */
export function asReading(value: number, quantity: ReadingQuantity): string {
  return !Number.isFinite(value) && quantity === "ohms" ? "open" : withUnit(value, READING_UNIT[quantity]);
}

/** "B+ to chassis, DC, operating": which reading is meant. */
export function placeOf(model: ChassisModel, { at, to, quantity, condition }: Reading): string {
  const where = quantity.endsWith("amps") ? `through ${at}` : to === model.reference ? at : `${at} to ${to}`;
  return `${where}, ${QUANTITY_WORDS[quantity]}, ${model.conditions.get(condition)?.id ?? condition}`;
}

/** Stages whose terminals, inner points or parts a point belongs to. */
export function stagesAt(model: ChassisModel, point: string): Stage[] {
  return model.stages.filter((stage) => Object.values(stage.points).includes(point) || Object.values(stage.parts).includes(point));
}

const FILTER = /^(filter-input|filter-later|decoupling)$/;

/** Whether a point is a high-voltage line: it carries a filter or decoupling capacitor. */
export function isSupplyPoint(model: ChassisModel, life: Life, point: string): boolean {
  if (point === model.reference) return false;
  return allIn(model, life, "capacitor").some(({ part, state }) => FILTER.test(part.duty ?? "") && endsOf(state)?.includes(point) === true);
}
