import { formatQuantity } from "../quantities/formatQuantity.ts";
import type { Dielectric, Marking, Result } from "../quantities/types.ts";
import { capacitorFamiliesOf } from "./capacitorFamilies.ts";
import { decodeCapacitorColours } from "./decodeCapacitorColours.ts";
import { marking, unreadable, type Workpiece } from "./workpiece.ts";

/** The dielectric a family's name speaks of. */
const dielectricOf = (family: string): Dielectric | undefined =>
  (["mica", "paper", "ceramic"] as const).find((name) => family.includes(name)) ?? (family.includes("polyester") ? "film" : undefined);

/** Reads a capacitor by its colour marks; every other reading is an alternative. `value` in farads. */
export function colouredCapacitor(
  piece: Workpiece,
  colours: readonly string[],
  dielectric: Dielectric | undefined,
  dielectricWritten: boolean,
): Result<Marking> {
  const left = piece.text.replaceAll(/[|\s,;]/g, "");
  if (left !== "") piece.notes.push(`not read: ${piece.text.replaceAll("|", " ").trim().replaceAll(/\s+/g, " ")}`);
  const readings = decodeCapacitorColours(colours, capacitorFamiliesOf(dielectric));
  if (!readings.ok) return unreadable(piece, `cannot be read: ${readings.problem.message}`);
  const [first, ...others] = readings.value;
  if (!first) return unreadable(piece, "fits no code of capacitors");
  piece.notes.push(`${first.family}: ${first.because}`, ...first.notes);
  const differing = others.filter((other) => other.value !== first.value);
  const voltsSettled = others.every((other) => other.ratedVolts === first.ratedVolts);
  if (!voltsSettled) piece.notes.push("rated volts not settled: the readings differ");
  if (differing.length > 0) piece.notes.push("ambiguous: the same colours can be read in more than one code");
  for (const other of differing) {
    piece.alternatives.push({
      reading: formatQuantity(other.value, "capacitance"),
      value: other.value,
      because: `${other.family}: ${other.because}`,
    });
  }
  const made = dielectric ?? (others.length === 0 ? dielectricOf(first.family) : undefined);
  return marking(piece, {
    value: first.value,
    dimension: "capacitance",
    tolerance: first.tolerance,
    toleranceWritten: first.toleranceWritten,
    ...(first.ratedVolts === undefined || !voltsSettled ? {} : { ratedVolts: first.ratedVolts, ratedVoltsKind: "dc" as const }),
    ...(made ? { dielectric: made, dielectricWritten } : {}),
  });
}
