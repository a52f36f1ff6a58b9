import type { FailureNote } from "./generated/index.ts";

/** What a fault does to the network, as failure notes name it. */
export type NotedFault = NonNullable<FailureNote["fault"]>["kind"];

/** A part as failure notes look at it. */
export interface NotedPart {
  kind: string;
  role?: string | undefined;
  duty?: string | undefined;
  /** What it is made of, where that is known; empty or absent: every make counts. */
  families?: readonly string[];
  /** Year of the chassis; absent: every era counts. */
  era?: number | undefined;
  /** Put together from a kit or at home: wiring errors are likelier. */
  kitBuilt: boolean;
}

/** How likely a fault is by the notes, and the notes that say so, heaviest first. */
export interface NotedOdds {
  weight: number;
  notes: readonly FailureNote[];
}

const PLACELESS_KINDS: ReadonlySet<string> = new Set(["wiring"]);

function carries({ partKind, fault }: FailureNote, kind: string): boolean {
  const kinds: readonly string[] | undefined = fault?.partKinds;
  return kinds === undefined ? partKind === kind || PLACELESS_KINDS.has(partKind) : kinds.includes(kind);
}

const namesPlace = ({ roles, duties }: FailureNote): boolean => (roles?.length ?? 0) + (duties?.length ?? 0) > 0;

const isInPlace = ({ roles, duties }: FailureNote, { role, duty }: NotedPart): boolean =>
  (role !== undefined && roles?.includes(role) === true) ||
  (duty !== undefined && (duties as readonly string[] | undefined)?.includes(duty) === true);

/** The note speaks of such a part: kind, place, make and era agree as far as both sides say anything. */
export function noteSpeaksOf(note: FailureNote, part: NotedPart): boolean {
  if (!carries(note, part.kind)) return false;
  if (namesPlace(note) && !isInPlace(note, part)) return false;
  const made: readonly string[] | undefined = note.families;
  if (
    made !== undefined &&
    part.families !== undefined &&
    part.families.length > 0 &&
    !part.families.some((family) => made.includes(family))
  )
    return false;
  const { era } = part;
  return era === undefined || (era >= (note.era?.from ?? era) && era <= (note.era?.to ?? era));
}

/**
 * Odds of every fault that the failure notes know of one part: the heaviest note counts, among those that name the part's role or duty
 * where there are any, else among those about its kind. Several notes about one fault do not add up: they tell the same story.
 *
 * @param notes failure notes of the dataset
 * @returns relative odds by kind of fault, on the scale of `fault.weight`; kinds that no note speaks of are missing
 */
export function faultWeights(notes: Iterable<FailureNote>, part: NotedPart): ReadonlyMap<NotedFault, NotedOdds> {
  const byKind = new Map<NotedFault, { weight: number; placed: boolean; note: FailureNote }[]>();
  for (const note of notes) {
    const { fault } = note;
    if (fault === undefined || !noteSpeaksOf(note, part)) continue;
    const weight = fault.weight * (part.kitBuilt ? (fault.kitBuilt ?? 1) : 1);
    byKind.set(fault.kind, [...(byKind.get(fault.kind) ?? []), { weight, placed: namesPlace(note), note }]);
  }
  const odds = new Map<NotedFault, NotedOdds>();
  for (const [kind, found] of byKind) {
    const placed = found.filter((entry) => entry.placed);
    const counted = (placed.length > 0 ? placed : found).sort((a, b) => b.weight - a.weight);
    odds.set(kind, { weight: counted[0]?.weight ?? 0, notes: counted.map(({ note }) => note) });
  }
  return odds;
}
