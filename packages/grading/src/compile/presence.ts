import type { Condition, Part, PartState } from "../model/index.ts";

/** V4A and V4B are sections of one bulb, V4. */
export function bulbOf(name: string): string {
  return /^([A-Za-z]+\d+)[A-Za-z]$/.exec(name)?.[1] ?? name;
}

/** Whether a part takes part in a condition: pulled tubes do not, loads only where they draw. */
export function isIn(part: Part, state: PartState, condition: Condition): boolean {
  if (part.kind === "tube" || part.kind === "regulator-tube") return tubeIsIn(part, condition, false);
  if (part.kind === "rectifier" && state.heater !== undefined) return tubeIsIn(part, condition, true);
  if (part.kind === "load") {
    if (part.presentIn !== undefined) return part.presentIn.includes(condition.id) || part.presentIn.includes(condition.like);
    return condition.tubes === "all" && condition.powered;
  }
  return true;
}

function tubeIsIn(part: Part, condition: Condition, rectifier: boolean): boolean {
  if (condition.tubes === "all") return true;
  if (condition.tubes === "none") return false;
  if (condition.tubes === "rectifiers") return rectifier;
  return condition.tubes.includes(part.name) || condition.tubes.includes(bulbOf(part.name));
}

/** Position of a switch: the condition's word, else the part's own for it, else closed when powered. */
export function switchIsClosed(part: Part, condition: Condition): boolean {
  const byRole = part.stage === undefined || part.role === undefined ? undefined : condition.switches[`${part.stage}.${part.role}`];
  const said = condition.switches[part.name] ?? byRole ?? part.positions?.[condition.id] ?? part.positions?.[condition.like];
  if (said !== undefined) return said === "closed";
  return condition.powered || part.duty !== "line-switch";
}
