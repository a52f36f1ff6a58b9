import type { Tolerance } from "@underchassis/calc";
import type { Life, Measured, Part, PartState } from "../../model/index.ts";

/** The part that sits in a place in one life: what is marked on it, and what a meter said of that very part. */
export interface InPlace {
  /** True when it was fitted by the restorer, false for the part that was found. */
  fitted: boolean;
  state: PartState;
  /** Value as marked, SI; undefined when nothing says. */
  markedValue: number | undefined;
  tolerance: Tolerance;
  measured: Measured | undefined;
}

const UNKNOWN: Tolerance = { minus: 0.2, plus: 0.2 };

/** What sits in a part's place; undefined when nothing does and nothing burnt is left there either. */
export function inPlace(part: Part, life: Life): InPlace | undefined {
  const state = part.lives[life];
  if (!state.present && state.open === undefined) return undefined;
  const changed = part.change === "replaced" || part.change === "added" || (part.change === "planned" && life === "planned");
  const fitted = changed && (life === "restored" || life === "planned");
  const measured = fitted ? part.fittedMeasured : (part.fittedMeasured ?? part.measured);
  const original = part.foundInPlace === undefined && !fitted ? part.lives.designed : undefined;
  const marked = original?.main?.from === "measurement" ? undefined : original?.main;
  // A fitted part's state carries its measurement; what it is marked with is kept in its marking.
  return {
    fitted,
    state,
    markedValue: marked?.value ?? state.marking?.value,
    tolerance: marked?.tolerance ?? state.marking?.tolerance ?? UNKNOWN,
    measured,
  };
}
