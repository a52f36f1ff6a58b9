import type { ChassisModel, Life } from "../../model/index.ts";
import { solveAll } from "./stress.ts";

/**
 * True when every powered condition could be solved at the highest line. Where one could not, the largest current is not known:
 * checks of currents then stay silent rather than call the rest of the conditions right.
 */
export function allSolved(model: ChassisModel, life: Life): boolean {
  return solveAll(model, life, "high").every(({ solved }) => solved.ok);
}
