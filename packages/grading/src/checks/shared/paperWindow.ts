import type { Reading } from "../../model/index.ts";

/** common-practice: papers that give one figure and no tolerance are meant within a fifth. */
export const PAPER_SHARE = 0.2;

/** The window that the papers mean; a single figure gets the customary fifth. */
export function paperWindow({ low, high }: Pick<NonNullable<Reading["published"]>, "low" | "high">): {
  low: number;
  high: number;
  widened: boolean;
} {
  if (low !== high) return { low, high, widened: false };
  const half = PAPER_SHARE * Math.abs(low);
  return { low: low - half, high: high + half, widened: true };
}
