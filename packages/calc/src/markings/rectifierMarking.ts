import type { Marking, Result } from "../quantities/types.ts";
import { readAmounts } from "./amounts.ts";
import { marking, take, takeWord, unreadable, type Workpiece } from "./workpiece.ts";

const makes: readonly (readonly [RegExp, string])[] = [
  [/\bselenium\b/i, "SELENIUM"],
  [/\bsilicon\b/i, "SILICON"],
  [/\bgermanium\b/i, "GERMANIUM"],
  [/\bcop(?:per)?[- ]?oxide\b/i, "COPPER-OXIDE"],
];

/** A registered type: 5Y3GT, 6X4, 80, 866A, GZ34, 35Z5GT/G, 1N4007. At the front of the marking only. */
const deviceType =
  /^\s*(\d{1,3}[A-Z]{1,2}\d{1,4}(?:-?[A-Z]{1,3})?(?:\/[A-Z0-9]{1,6})?|[A-Z]{1,3}\d{1,4}[A-Z]{0,2}(?:\/[A-Z0-9]{1,6})?|\d{2,4}[A-Z]?(?!\s*(?:k?V|m?A|W|P\.?I\.?V)))(?=[\s,;(|]|$)/i;

/**
 * Reads a rectifier: a type ("5Y3GT", "1N4007") or a make with its ratings ("silicon 1000 V 1 A", "selenium 130 V 100 mA").
 * `ratedVolts` of silicon is the peak reverse voltage (kind "dc"), of selenium and copper oxide the RMS input ("ac").
 */
export function rectifierMarking(piece: Workpiece): Result<Marking> {
  const make = takeWord(piece, makes);
  const device = make ? null : take(piece, deviceType);
  const peak = take(piece, /\bP\.?I\.?V\.?(?![A-Za-z])|\bPRV\b|\bVRRM\b|\bpeak(?: (?:reverse|inverse))?\b/i);
  take(piece, /\b(?:rectifier|diode|stack|bridge)\b/i);
  const list = readAmounts(piece, { dimensions: ["voltage", "current"], mixedFractions: false }, peak ? 1 : 0);
  if (!list.ok) return list;
  const { by, bare } = list.value;
  const volts = by.voltage ?? bare[0];
  const type = make ?? device?.[1]?.toUpperCase().replace("-", "");
  if (type === undefined) return unreadable(piece, "names no rectifier type or make", `silicon ${piece.asWritten.trim()}`);
  const alternating = !peak && (type === "SELENIUM" || type === "COPPER-OXIDE" || volts?.unit?.volts === "ac");
  if (volts && type === "SILICON" && !peak) piece.notes.push("volts of a silicon rectifier read as peak reverse voltage");
  return marking(piece, {
    type,
    ...(volts ? { ratedVolts: volts.value, ratedVoltsKind: alternating ? ("ac" as const) : ("dc" as const) } : {}),
    ...(by.current ? { ratedAmps: by.current.value } : {}),
  });
}
