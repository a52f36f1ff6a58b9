import type { Marking, Result } from "../quantities/types.ts";
import { readAmounts } from "./amounts.ts";
import { takeTolerance } from "./takeTolerance.ts";
import { marking, take, unreadable, type Workpiece } from "./workpiece.ts";

/** Reads a choke or coil: "8 H 150 mA 200 ohm". `value` in henries, `ratedAmps` direct current, `ohms` the wire. */
export function inductorMarking(piece: Workpiece): Result<Marking> {
  const percent = takeTolerance(piece);
  if (!percent.ok) return percent;
  take(piece, /\b(?:filter )?(?:choke|coil|inductor)\b/i);
  take(piece, /\bDC\s?R(?:esistance)?\b|\bDC\b/i);
  const swinging = take(piece, /(?<![\d.])(\d+(?:\.\d+)?)\s*(?:[/-]|to)\s*(\d+(?:\.\d+)?)\s*(?:H|hy|henr(?:y|ies|ys))(?![A-Za-z])\.?/i);
  take(piece, /\bswinging\b/i);
  const list = readAmounts(piece, { dimensions: ["inductance", "current", "resistance", "voltage"], mixedFractions: false });
  if (!list.ok) return list;
  const { inductance, current, resistance, voltage } = list.value.by;
  if (current?.value === 0) return unreadable(piece, "gives a current of nothing");
  if (swinging && !inductance) {
    const [least = 0, most = 0] = [Number(swinging[1]), Number(swinging[2])].sort((one, other) => one - other);
    piece.notes.push(`swinging choke: ${most} H at little current, ${least} H at the rated current`);
    piece.alternatives.push({ reading: `${most} H`, value: most, because: "inductance at little current" });
    return marking(piece, {
      value: least,
      dimension: "inductance",
      ...(current ? { ratedAmps: current.value } : {}),
      ...(resistance ? { ohms: resistance.value } : {}),
    });
  }
  if (swinging) return unreadable(piece, "gives more than one inductance");
  if (!inductance) return unreadable(piece, "gives no inductance");
  return marking(piece, {
    value: inductance.value,
    dimension: "inductance",
    ...(percent.value ? { tolerance: percent.value, toleranceWritten: true } : {}),
    ...(current ? { ratedAmps: current.value } : {}),
    ...(resistance ? { ohms: resistance.value } : {}),
    ...(voltage ? { ratedVolts: voltage.value } : {}),
  });
}
