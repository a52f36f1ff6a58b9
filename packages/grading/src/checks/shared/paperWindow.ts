import type { Reading } from "../../model/index.ts";

/** common-practice: papers that give one figure and no tolerance are meant within a fifth. */
export const PAPER_SHARE = 0.2;
/** common-practice: a grid that should stand at 0 V may be off by this. */
const ZERO_VOLTS = 0.1;

/** The window that the papers mean; a single figure gets the customary fifth. */
export function paperWindow({ low, high }: Pick<NonNullable<Reading["published"]>, "low" | "high">): {
  low: number;
  high: number;
  widened: boolean;
} {
  if (low !== high) return { low, high, widened: false };
  const half = Math.max(PAPER_SHARE * Math.abs(low), low === 0 ? ZERO_VOLTS : 0);
  return { low: low - half, high: high + half, widened: true };
}
