import { formatQuantity } from "../quantities/formatQuantity.ts";
import type { Marking, Result } from "../quantities/types.ts";
import { readAmounts } from "./amounts.ts";
import { marking, take, unreadable, type Workpiece } from "./workpiece.ts";

const side = "(\\d+(?:\\.\\d+)?)\\s*(?:V(?:olts)?)?";
const tapped = new RegExp(
  `(?<![\\d.])${side}\\s*-\\s*(?:0|ct|c\\.t\\.)\\s*-\\s*(\\d+(?:\\.\\d+)?)\\s*(?:V(?:ac|rms|olts)?\\.?(?![A-Za-z])|~)?`,
  "i",
);
const tapWord = /(?<=\d\s*V?\s*)(?:c\.?\s?t\.?|cent(?:er|re)[- ]?tap(?:ped)?)(?![A-Za-z])|\b(?:CT|cent(?:er|re)[- ]?tap(?:ped)?)\b/i;

/**
 * Reads a winding: "325-0-325 V 120 mA", "6.3 V 3.5 A", "650 V CT 120 mA". `value` in volts RMS, of one side when it is centre-tapped;
 * `ratedAmps`, `ohms` (the wire), `ratedWatts` (volt-amperes).
 */
export function windingMarking(piece: Workpiece): Result<Marking> {
  let volts: number | undefined;
  let centerTapped = false;
  const sides = take(piece, tapped);
  if (sides) {
    const [first, second] = [Number(sides[1]), Number(sides[2])];
    if (first !== second) return unreadable(piece, "has two unequal sides", `${first}-0-${first} V`);
    volts = first;
    centerTapped = true;
  } else if (take(piece, tapWord)) {
    centerTapped = true;
  }
  const frequency = take(piece, /(?<![\d.])\d+(?:\s*[-/]\s*\d+)?\s*(?:Hz|cps|c\/s|cycles?|cy)(?![A-Za-z])\.?/i);
  if (frequency) piece.notes.push(`for ${frequency[0]}`);
  // "0-6.3 V" is a plain winding with its start written as 0.
  if (!centerTapped) take(piece, /^\s*0\s*-\s*(?=\d)/);
  take(piece, /\b(?:primary|secondary|winding|heater|filament)\b/i);
  const list = readAmounts(
    piece,
    { dimensions: ["voltage", "current", "power", "resistance"], mixedFractions: false },
    volts === undefined ? 1 : 0,
  );
  if (!list.ok) return list;
  const { by, bare } = list.value;
  const written = by.voltage ?? bare[0];
  if (volts !== undefined && by.voltage) return unreadable(piece, "gives more than one voltage");
  if (by.voltage && bare[0]) return unreadable(piece, "holds a number without unit");
  if (volts === undefined && written) {
    volts = centerTapped ? written.value / 2 : written.value;
    if (!by.voltage) piece.notes.push("no unit written: read as volts");
    if (centerTapped)
      piece.notes.push(`${formatQuantity(written.value, "voltage")} across the whole winding, ${formatQuantity(volts, "voltage")} a side`);
  }
  if (volts === undefined || !(volts > 0)) return unreadable(piece, "gives no voltage");
  return marking(piece, {
    value: volts,
    dimension: "voltage",
    ratedVoltsKind: "ac",
    ...(centerTapped ? { centerTapped } : {}),
    ...(by.current ? { ratedAmps: by.current.value } : {}),
    ...(by.power ? { ratedWatts: by.power.value } : {}),
    ...(by.resistance ? { ohms: by.resistance.value } : {}),
  });
}
