import type { CautionPlace, Dataset } from "@underchassis/dataset";
import type { Part, PartState } from "../model/index.ts";

/** What a part is made of, in the words of the shared reference. */
export type Material = NonNullable<CautionPlace["families"]>[number];

/** Lives that somebody at the bench has in hand: what was found, what is there, what is to come. */
const AT_HAND = ["found", "restored", "planned"] as const;

/** What the part is in the lives at hand, where there is one at all; one burnt open counts. */
export const statesAtHand = (part: Part): readonly PartState[] =>
  AT_HAND.map((life) => part.lives[life]).filter(({ present, open }) => present || open === true);

const DEVICES: Readonly<Record<string, Material>> = {
  silicon: "silicon",
  selenium: "selenium",
  "vacuum-diode": "vacuum",
  "gas-diode": "gas",
  "gas-regulator": "gas",
};

function materialOf({ marking, dielectric, device }: PartState): Material | undefined {
  const made = marking?.dielectric ?? dielectric;
  if (made !== undefined) return made;
  if (device !== undefined) return DEVICES[device.kind];
  const composition = marking?.composition;
  if (composition === undefined) return undefined;
  return composition === "carbon-composition" ? "composition" : composition === "wirewound" ? "wirewound" : "film-resistor";
}

/** What the part is made of in any life at hand. */
export const materialsOf = (part: Part): readonly Material[] => statesAtHand(part).flatMap((state) => materialOf(state) ?? []);

/** All that the job says of a part in words: its name and title, what is written on it, what was found in its place. */
export function writtenOn(part: Part): string {
  const { marked, measured, fitted } = part.asWritten;
  return [part.name, part.title, marked, measured, fitted, part.foundInPlace, ...statesAtHand(part).map(({ type }) => type)]
    .filter(Boolean)
    .join(" ; ");
}

/** Whether a type, under any of its names, is one of the list; an entry that closes with * stands for every ending. */
export function typeIs(type: string, list: readonly string[], { tubes }: Dataset): boolean {
  const names = [type, ...(tubes.get(type.toUpperCase())?.names ?? [])].map((name) => name.toUpperCase());
  return list.some((entry) =>
    entry.endsWith("*") ? names.some((name) => name.startsWith(entry.slice(0, -1).toUpperCase())) : names.includes(entry.toUpperCase()),
  );
}
