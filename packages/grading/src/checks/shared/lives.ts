import type { ChassisModel, Life, Part, PartKind, PartState } from "../../model/index.ts";

/**
 * The chassis that conclusions are about: as it stands on the bench now, and, when changes are only planned, as it would be with them.
 * What was found and has been put right is not judged again; the table of changes shows it.
 */
export function judgedLives(model: ChassisModel): Life[] {
  return model.hasPlans ? ["restored", "planned"] : ["restored"];
}

/** Parts of some kinds that are there in a life, with their state. For `planned` only the parts that a plan touches. */
export function partsIn(model: ChassisModel, life: Life, ...kinds: PartKind[]): { part: Part; state: PartState }[] {
  return [...model.parts.values()].flatMap((part) => {
    const state = part.lives[life];
    const wanted = (kinds.length === 0 || kinds.includes(part.kind)) && state.present && (life !== "planned" || part.change === "planned");
    return wanted ? [{ part, state }] : [];
  });
}

/** What identifies a part in a finding. */
export function subject(part: Part): { part: string; stage?: string; location: Part["location"] } {
  return { part: part.id, ...(part.stage === undefined ? {} : { stage: part.stage }), location: part.location };
}
