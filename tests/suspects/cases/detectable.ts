/** Whether a fault shows at all: some reading off by more than the chassis' own spread and the meter can explain. */

import type { PoweredReadings, StoredReadings } from "./caseFile.ts";
import { METER_INPUT_OHMS, OPEN_OHMS, resolution, type StoredQuantity } from "./meterError.ts";

const SIGMAS = 3;

/** A reading on the scale on which it is compared: ohms as a logarithm. */
const onScale = (quantity: StoredQuantity, value: number): number =>
  quantity === "ohms" ? Math.log(Math.min(value, OPEN_OHMS) + resolution("ohms", value)) : value;

interface Flat {
  quantity: StoredQuantity;
  point: number;
  condition: string;
  value: number;
}

export const shown = (volts: number, sourceOhms: number): number => (volts * METER_INPUT_OHMS) / (METER_INPUT_OHMS + sourceOhms);

function powered(condition: string, readings: PoweredReadings | null | undefined): Flat[] {
  if (readings === null || readings === undefined) return [];
  return [
    ...readings.volts.map((value, point) => ({
      quantity: "dc-volts" as const,
      point,
      condition,
      value: shown(value, readings.sourceOhms[point] ?? 0),
    })),
    ...readings.ripple.map((value, point) => ({ quantity: "ripple-volts" as const, point, condition, value })),
  ];
}

function flatten(readings: StoredReadings): Flat[] {
  return [
    ...powered("operating", readings.operating),
    ...powered("tubes-out", readings["tubes-out"]),
    ...readings.cold.map((value, point) => ({
      quantity: "ohms" as const,
      point,
      condition: "cold",
      value: value ?? Number.POSITIVE_INFINITY,
    })),
  ];
}

const keyOf = ({ quantity, point, condition }: Flat): string => `${quantity} ${point} ${condition}`;

/** Mean and standard deviation of every reading over healthy chassis. */
export class HealthySpread {
  private readonly spread = new Map<string, { mean: number; deviation: number }>();

  constructor(healthy: readonly StoredReadings[]) {
    const values = new Map<string, number[]>();
    for (const reading of healthy.flatMap(flatten)) {
      const list = values.get(keyOf(reading)) ?? [];
      list.push(onScale(reading.quantity, reading.value));
      values.set(keyOf(reading), list);
    }
    for (const [key, list] of values) {
      const mean = list.reduce((sum, value) => sum + value, 0) / list.length;
      const variance = list.reduce((sum, value) => sum + (value - mean) ** 2, 0) / Math.max(1, list.length - 1);
      this.spread.set(key, { mean, deviation: Math.sqrt(variance) });
    }
  }

  /** @param among which readings count; all unless given */
  isOff(
    readings: StoredReadings,
    meterSigma: (quantity: StoredQuantity, value: number) => number,
    among: (flat: Flat) => boolean = () => true,
  ): boolean {
    return flatten(readings).some((reading) => {
      const known = this.spread.get(keyOf(reading));
      if (known === undefined || !among(reading)) return false;
      const value = onScale(reading.quantity, reading.value);
      const meter = meterSigma(reading.quantity, reading.value);
      const relative =
        reading.quantity === "ohms" ? meter / (Math.min(reading.value, OPEN_OHMS) + resolution("ohms", reading.value)) : meter;
      return Math.abs(value - known.mean) > SIGMAS * Math.hypot(known.deviation, relative);
    });
  }
}
