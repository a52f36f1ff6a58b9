import type { Part } from "../../model/index.ts";

/** Duties in which a tenth already moves a bias, a tap or a meter. common-practice (practitioners say 10, 20 or 30 %). */
const CLOSE: ReadonlySet<string> = new Set(["bias", "divider", "screen-dropping", "balancing", "avc", "meter"]);
const CLOSE_SHARE = 0.1;
const LOOSE_SHARE = 0.2;

/** Share of its marked value beyond which a resistor of this duty is changed; never within its own marked tolerance. */
export function driftLimit(part: Part, tolerance: number): number {
  return Math.max(tolerance, part.advice?.replace?.driftLimit ?? (CLOSE.has(part.duty ?? "") ? CLOSE_SHARE : LOOSE_SHARE));
}
