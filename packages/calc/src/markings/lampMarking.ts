import type { Marking, Result } from "../quantities/types.ts";
import { readAmounts } from "./amounts.ts";
import { marking, take, unreadable, type Workpiece } from "./workpiece.ts";

/**
 * Reads a lamp: "6.3 V 0.15 A", "40 W 120 V", "#47". Of volts, amperes and watts, the third follows from two
 * (watts = volts * amperes, the lamp hot). A lamp number alone sets `type` only.
 */
export function lampMarking(piece: Workpiece): Result<Marking> {
  const number =
    take(piece, /^\s*(?:#|no\.?\s*|type\s*)\s*(\d{1,4}[A-Z]?)(?![\d.])/i) ?? take(piece, /^\s*(\d{1,4}[A-Z]?)\s*$(?<![WVA]\s*)/i);
  take(piece, /\b(?:lamp|bulb|pilot(?: light)?|dial)\b/i);
  const list = readAmounts(piece, { dimensions: ["voltage", "current", "power"], mixedFractions: false });
  if (!list.ok) return list;
  const volts = list.value.by.voltage?.value;
  let amps = list.value.by.current?.value;
  let watts = list.value.by.power?.value;
  if (volts === undefined && !number) return unreadable(piece, "gives no voltage");
  if (amps === undefined && watts === undefined && !number) return unreadable(piece, "gives neither amperes nor watts");
  if (volts === 0) return unreadable(piece, "gives a voltage of nothing");
  if (volts !== undefined && amps === undefined && watts !== undefined) {
    amps = watts / volts;
    piece.notes.push("amperes from the watts and the volts");
  } else if (volts !== undefined && watts === undefined && amps !== undefined) {
    watts = volts * amps;
    piece.notes.push("watts from the volts and the amperes");
  }
  return marking(piece, {
    ...(number?.[1] ? { type: number[1].toUpperCase() } : {}),
    ...(volts === undefined ? {} : { value: volts, dimension: "voltage" as const, ratedVolts: volts }),
    ...(amps === undefined ? {} : { ratedAmps: amps }),
    ...(watts === undefined ? {} : { ratedWatts: watts }),
  });
}
