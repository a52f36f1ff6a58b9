import type { JobPart } from "@underchassis/dataset";
import type { ReadingQuantity } from "../model/index.ts";
import type { Ground } from "../suspects/ground.ts";
import { type Observable, scaled } from "../suspects/observable.ts";

/** A small half-wave supply with silicon, two capacitors and a bleeder. Values common-practice. */
export const halfWaveParts: readonly JobPart[] = [
  {
    name: "T1",
    kind: "transformer",
    windings: {
      primary: { between: ["line hot", "line neutral"], marked: "120 V", measured: "5 ohm" },
      hv: { between: ["hv", "chassis"], marked: "200 V", measured: "150 ohm" },
    },
  },
  { name: "D1", kind: "rectifier", type: "silicon 1000 V 1 A", between: ["hv", "raw"] },
  { name: "C1", kind: "capacitor", marked: "20 uF 450 V electrolytic", between: ["raw", "chassis"] },
  { name: "R1", kind: "resistor", marked: "2.2 kohm 10%", between: ["raw", "B+"] },
  { name: "C2", kind: "capacitor", marked: "20 uF 450 V electrolytic", between: ["B+", "chassis"] },
  { name: "R2", kind: "resistor", marked: "15 kohm 10%", between: ["B+", "chassis"] },
];

/** A full-wave supply with equal halves and an output pentode on it. Values common-practice. */
export const outputStageParts: readonly JobPart[] = [
  {
    name: "T1",
    kind: "transformer",
    windings: {
      primary: { between: ["line hot", "line neutral"], marked: "120 V", measured: "5 ohm" },
      hv: { between: ["hv 1", "chassis", "hv 2"], marked: "200-0-200 V", measured: "200 ohm" },
      "rectifier-filament": { between: ["raw", "filament 2"], marked: "5 V 2 A", measured: "0.1 ohm" },
      heater: { between: ["chassis", "heater 2"], marked: "6.3 V 1 A", measured: "0.1 ohm" },
    },
  },
  { name: "V1", kind: "rectifier", type: "5Y3GT", pins: { "plate-1": "hv 1", "plate-2": "hv 2", cathode: "raw" } },
  { name: "C1", kind: "capacitor", marked: "20 uF 450 V electrolytic", between: ["raw", "chassis"] },
  { name: "R1", kind: "resistor", marked: "1 kohm 10%", between: ["raw", "B+"] },
  { name: "C2", kind: "capacitor", marked: "20 uF 450 V electrolytic", between: ["B+", "chassis"] },
  { name: "R2", kind: "resistor", marked: "47 kohm 10%", between: ["B+", "chassis"] },
  { name: "R3", kind: "resistor", marked: "2.7 kohm 10%", between: ["B+", "plate"] },
  { name: "R4", kind: "resistor", marked: "470 kohm 10%", between: ["grid", "chassis"] },
  { name: "R5", kind: "resistor", marked: "390 ohm 10%", between: ["cathode", "chassis"] },
  { name: "V2", kind: "tube", type: "6V6GT", pins: { plate: "plate", screen: "B+", grid: "grid", cathode: "cathode" } },
];

/** Something that a meter of 10 megohm and one per cent can show, against the chassis. */
export function observableAt(quantity: ReadingQuantity, at: string, more: Partial<Observable> = {}): Observable {
  return { quantity, at, to: "chassis", condition: quantity === "ohms" ? "cold" : "operating", meterOhms: 10e6, accuracy: 0.01, ...more };
}

/** A ground without a chassis behind it: what is read, what a healthy chassis shows, and slopes, each reading's in a row. */
export function groundOf(
  readings: readonly { observable: Observable; nominal: number; slopes?: readonly number[] }[],
  volts = 100,
): Ground {
  const width = readings[0]?.slopes?.length ?? 0;
  return {
    observables: readings.map(({ observable }) => observable),
    situations: [],
    nominal: Float64Array.from(readings, ({ observable, nominal }) => scaled(observable.quantity, nominal)),
    loading: new Float64Array(readings.length).fill(1),
    soft: new Float64Array(readings.length),
    offsets: new Float64Array(readings.length),
    slopes: Float64Array.from(readings.flatMap(({ slopes }) => slopes ?? [])),
    parameters: Array.from({ length: width }, (_, k) => ({ key: `R${k + 1}|ohms|`, part: `R${k + 1}`, deviation: 0.1, offset: 0 })),
    volts,
  };
}
