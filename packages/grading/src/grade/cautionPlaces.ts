import { formatQuantity } from "@underchassis/calc";
import type { CautionPlace } from "@underchassis/dataset";
import { stressedPoints } from "../checks/shared/stressedPoints.ts";
import type { ChassisModel, Part, Stage } from "../model/index.ts";
import { materialsOf, statesAtHand, typeIs, writtenOn } from "./partTraits.ts";

const has = <T>(list: readonly T[] | undefined, value: T | undefined): boolean =>
  list === undefined || (value !== undefined && list.includes(value));

/** Whether one of the words stands in the text as a whole word, whatever its case. */
function saysWord(text: string, words: readonly string[]): string | undefined {
  const padded = ` ${text.toLowerCase().replace(/[^a-z0-9-]+/g, " ")} `;
  return words.find((word) => padded.includes(` ${word.toLowerCase()} `));
}

/** The year lies within, or nobody knows the year. */
const withinEra = (era: CautionPlace["era"], year: number | undefined): boolean =>
  era === undefined ||
  year === undefined ||
  (year >= (era.from ?? Number.NEGATIVE_INFINITY) && year <= (era.to ?? Number.POSITIVE_INFINITY));

const PART_TRAITS = ["partKinds", "roles", "duties", "families", "types", "words", "ratedVoltsFrom"] as const;

const inStage = ({ templates, templateFamilies }: CautionPlace, stage: Stage): boolean =>
  has(templates, stage.template.id) && has(templateFamilies, stage.template.family);

function isSuchPart(place: CautionPlace, part: Part, model: ChassisModel): boolean {
  const states = statesAtHand(part);
  if (states.length === 0) return false;
  const { families, types, words, ratedVoltsFrom } = place;
  return (
    has(place.partKinds, part.kind as never) &&
    has(place.roles, part.role) &&
    has(place.duties, part.duty as never) &&
    (families === undefined || materialsOf(part).some((material) => families.includes(material))) &&
    (types === undefined || states.some(({ type }) => type !== undefined && typeIs(type, types, model.dataset))) &&
    (words === undefined || saysWord(writtenOn(part), words) !== undefined) &&
    (ratedVoltsFrom === undefined || states.some(({ ratedVolts }) => (ratedVolts ?? 0) >= ratedVoltsFrom))
  );
}

/** Names of the parts that match, in the stages that match where the place names any. */
function partReasons(place: CautionPlace, stages: readonly Stage[] | undefined, model: ChassisModel): string[] {
  const within = stages?.map(({ id }) => id);
  return [...model.parts.values()]
    .filter((part) => within === undefined || (part.stage !== undefined && within.includes(part.stage)))
    .filter((part) => isSuchPart(place, part, model))
    .map(({ name }) => name);
}

function chassisReasons(place: CautionPlace, model: ChassisModel): string[] {
  if (place.isolation !== undefined)
    return [place.isolation === "transformerless" ? "transformerless chassis" : "chassis with a transformer"];
  return [model.era === undefined ? "a chassis whose year is not given" : `a chassis of ${model.era}`];
}

/**
 * What in a chassis makes one place of a caution's `appliesTo` hold: parts by name, stages by title, points with their voltage, or
 * the chassis itself. Everything that the place states must hold together. Parts count as they were found, stand now or are planned;
 * what the papers call for and nobody found does not.
 *
 * @param place one entry of a caution's `appliesTo`
 * @returns reasons for the report, in the order of the chassis; none: the place does not hold
 */
export function placeReasons(place: CautionPlace, model: ChassisModel): string[] {
  const { isolation, describedAs, aboveVolts } = place;
  if (!withinEra(place.era, model.era)) return [];
  if (isolation !== undefined && isolation !== model.isolation) return [];
  const word = describedAs && saysWord(`${model.title} ${model.description}`, describedAs);
  if (describedAs !== undefined && word === undefined) return [];
  const namesStages = place.templates !== undefined || place.templateFamilies !== undefined;
  const stages = namesStages ? model.stages.filter((stage) => inStage(place, stage)) : undefined;
  if (stages?.length === 0) return [];
  const points = aboveVolts === undefined ? undefined : stressedPoints(model, aboveVolts);
  if (points?.length === 0) return [];

  const parts = PART_TRAITS.some((trait) => place[trait] !== undefined) ? partReasons(place, stages, model) : undefined;
  if (parts !== undefined) return parts;
  if (points !== undefined) return points.map(({ point, volts }) => `${point}: ${formatQuantity(volts, "voltage")}`);
  if (stages !== undefined) return stages.map(({ title }) => title);
  return word === undefined ? chassisReasons(place, model) : [`described as ${word}`];
}
