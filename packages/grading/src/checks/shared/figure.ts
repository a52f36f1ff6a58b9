import type { Figure } from "../../model/index.ts";

type Basics = { label: string; unit: string; how: string; source: string; low?: number; high?: number };

/** A number without a limit. */
export function figure(label: string, value: number | null, unit: string, how: string, source = "computed"): Figure {
  return { label, value, unit, how, source };
}

/** A number that must stay at or below a limit. The margin is the share of the limit that is left (negative: exceeded). */
export function atMost(value: number, limit: number, basics: Basics): Figure {
  return {
    ...basics,
    value,
    limit,
    limitKind: "maximum",
    margin: limit === 0 ? (value === 0 ? 0 : -1) : (limit - value) / Math.abs(limit),
  };
}

/** A number that must reach at least a limit. The margin is how far it lies above, as a share of the limit. */
export function atLeast(value: number, limit: number, basics: Basics): Figure {
  return { ...basics, value, limit, limitKind: "minimum", margin: limit === 0 ? 0 : (value - limit) / Math.abs(limit) };
}
