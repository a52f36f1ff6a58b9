import { percentTolerance } from "../quantities/parseTolerance.ts";
import type { Marking, Result } from "../quantities/types.ts";
import { readAmounts } from "./amounts.ts";
import { takeTolerance } from "./takeTolerance.ts";
import { marking, take, unreadable, type Workpiece } from "./workpiece.ts";

/** Reads an inrush limiter: "50 ohm 2 A 20 J". `value` and `ohms` are the resistance at 25 degC; +-20 % unless written (S35). */
export function thermistorMarking(piece: Workpiece): Result<Marking> {
  const percent = takeTolerance(piece);
  if (!percent.ok) return percent;
  take(piece, /\b(?:NTC|thermistor|inrush limiter)\b/i);
  const list = readAmounts(piece, { dimensions: ["resistance", "current", "energy"], mixedFractions: false });
  if (!list.ok) return list;
  const { resistance, current, energy } = list.value.by;
  if (!resistance) return unreadable(piece, "gives no cold resistance");
  return marking(piece, {
    value: resistance.value,
    dimension: "resistance",
    ohms: resistance.value,
    tolerance: percent.value ?? percentTolerance(20),
    toleranceWritten: percent.value !== undefined,
    ...(current ? { ratedAmps: current.value } : {}),
    ...(energy ? { joules: energy.value } : {}),
  });
}
