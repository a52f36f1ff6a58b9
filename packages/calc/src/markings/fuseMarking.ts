import type { Marking, Result } from "../quantities/types.ts";
import { readAmounts } from "./amounts.ts";
import { marking, take, takeWord, unreadable, type Workpiece } from "./workpiece.ts";

type Speed = NonNullable<Marking["speed"]>;

/** Sizes of the trade and of IEC 60127 (5 x 20 mm). */
const body = /\b([3-9]A[GB])\b|(?<![\d.])(5\s*x\s*20|6\.3\s*x\s*32)(?:\s*mm)?(?![\d.])|1\/4"?\s*x\s*1[ -]1\/4"?(?:\s*in(?:ch)?)?/i;

/** Words first, then the letters of IEC 60127: FF very fast, F fast, M medium, T slow, TT very slow. */
const speeds: readonly (readonly [RegExp, Speed])[] = [
  [/\b(?:very|super|ultra)[- ]?(?:fast|quick)(?:[- ]acting)?\b/i, "FF"],
  [/\b(?:very|super)[- ]?slow(?:[- ]blow)?\b/i, "TT"],
  [/\bslow(?:[- ]?(?:blow(?:ing)?|acting))?\b|\btime[- ]?(?:lag|delay)\b|\bdelay(?:ed)?(?:[- ]action)?\b|\banti[- ]?surge\b/i, "T"],
  [/\b(?:fast|quick)(?:[- ]?(?:blow(?:ing)?|acting))?\b|\bnormal(?:[- ]blow)?\b/i, "F"],
  [/\bmedium(?:[- ](?:blow|lag|acting))?\b/i, "M"],
  [/(?<![A-Za-z0-9])FF(?![A-Za-z])/, "FF"],
  [/(?<![A-Za-z0-9])TT(?![A-Za-z])/, "TT"],
  [/(?<![A-Za-z0-9])T(?![A-Za-z])/, "T"],
  [/(?<![A-Za-z0-9])M(?![A-Za-z])/, "M"],
  [/(?<![A-Za-z0-9])F(?![A-Za-z])/, "F"],
];

/** Reads a fuse: "2 A slow", "T1.6A", "3AG 1 1/2 A fast", "F 500 mA L 250 V". `value` in amperes; `type` is the body size. */
export function fuseMarking(piece: Workpiece): Result<Marking> {
  const size = take(piece, body);
  take(piece, /\bfuse\b/i);
  const breaking = take(piece, /(?<=\d\s*m?A\s*)[LHE](?![A-Za-z])|(?<![A-Za-z0-9])[LHE](?![A-Za-z0-9])/)?.[0];
  const speed = takeWord(piece, speeds);
  const list = readAmounts(piece, { dimensions: ["current", "voltage"], decimalComma: true }, 1);
  if (!list.ok) return list;
  const { by, bare } = list.value;
  const rated = by.current ?? bare[0];
  if (!rated) return unreadable(piece, "gives no current", `${piece.asWritten.trim()} 1 A`);
  if (by.current && bare[0]) return unreadable(piece, "holds a number without unit");
  if (!by.current) piece.notes.push("no unit written: read as ampere");
  if (!(rated.value > 0)) return unreadable(piece, "gives a current of nothing");
  if (rated.value > 100) return unreadable(piece, "gives a current no equipment fuse has", `${rated.value} mA`);
  if (!speed) piece.notes.push("speed not written");
  if (breaking) piece.notes.push(`breaking capacity ${breaking === "L" ? "low" : breaking === "H" ? "high" : "enhanced"} (${breaking})`);
  return marking(piece, {
    value: rated.value,
    dimension: "current",
    ratedAmps: rated.value,
    ...(by.voltage ? { ratedVolts: by.voltage.value, ratedVoltsKind: by.voltage.unit?.volts ?? ("ac" as const) } : {}),
    ...(speed ? { speed } : {}),
    ...(size ? { type: size[0].toUpperCase().replace(/\s+/g, " ") } : {}),
  });
}
