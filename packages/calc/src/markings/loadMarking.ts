import type { Marking, Result } from "../quantities/types.ts";
import { readAmounts } from "./amounts.ts";
import { marking, unreadable, type Workpiece } from "./workpiece.ts";

/**
 * Reads a load: "60 mA" or "60 mA at 250 V" (`value` in amperes), "5 kohm" (`value` and `ohms` in ohms), "15 W at 250 V" (amperes
 * from watts and volts). Which fields are set tells a current drawn at any voltage from a resistance.
 */
export function loadMarking(piece: Workpiece): Result<Marking> {
  const list = readAmounts(piece, { dimensions: ["current", "resistance", "voltage", "power"], mixedFractions: false });
  if (!list.ok) return list;
  const { current, resistance, voltage, power } = list.value.by;
  if (current && resistance) return unreadable(piece, "gives both a current and a resistance");
  const rated = {
    ...(voltage ? { ratedVolts: voltage.value, ratedVoltsKind: voltage.unit?.volts ?? ("dc" as const) } : {}),
    ...(power ? { ratedWatts: power.value } : {}),
  };
  if (resistance) return marking(piece, { value: resistance.value, dimension: "resistance", ohms: resistance.value, ...rated });
  let amps = current?.value;
  if (amps === undefined && power && voltage && voltage.value !== 0) {
    amps = power.value / Math.abs(voltage.value);
    piece.notes.push("current from the watts and the volts");
  }
  if (amps === undefined) return unreadable(piece, "gives neither a current nor a resistance", "60 mA");
  return marking(piece, { value: amps, dimension: "current", ratedAmps: amps, ...rated });
}
