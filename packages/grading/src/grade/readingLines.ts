import { READING_UNIT, type ReportReadingLine } from "@underchassis/dataset";
import type { ChassisModel, Prediction, Reading } from "../model/index.ts";
import { tubeDistance } from "./tubeDistance.ts";

/** A reading beyond this many standard deviations (and beyond the worst case) is far outside. */
const FAR_SIGMAS = 4;

/** Half of the last digit that a usual meter shows; below it a reading and a prediction are the same. common-practice. */
const LEAST_SHOWN: Readonly<Record<string, number>> = { V: 5e-3, ohm: 0.05, A: 5e-5 };

/** What the chassis in the reading's own life should have shown on this meter at that line voltage. */
export function predictReading(model: ChassisModel, reading: Reading): Prediction | undefined {
  const line = reading.lineVolts ?? "actual";
  const prediction = model.predict({ life: reading.life, condition: reading.condition, line }, reading, {
    ohms: reading.loadOhms,
    accuracy: reading.meter.accuracy,
  });
  return prediction === undefined ? undefined : shown(prediction, LEAST_SHOWN[READING_UNIT[reading.quantity]] ?? 0);
}

/** A window no narrower than a meter's last digit: a grid at 0 V reads 0 V. */
function shown(prediction: Prediction, least: number): Prediction {
  const { nominal, low, high, sigma, worstLow, worstHigh } = prediction;
  return {
    ...prediction,
    low: Math.min(low, nominal - least),
    high: Math.max(high, nominal + least),
    sigma: Math.max(sigma, least / 2),
    worstLow: Math.min(worstLow, nominal - least),
    worstHigh: Math.max(worstHigh, nominal + least),
  };
}

export type Verdict = ReportReadingLine["verdict"];

/** Within the window, outside it, or so far outside that no tolerance explains it. */
export function verdictOf(reading: Reading, prediction: Prediction | undefined): Verdict {
  if (prediction === undefined) return "not-computed";
  const { value } = reading;
  if (!Number.isFinite(prediction.nominal)) return !Number.isFinite(value) || value >= prediction.low ? "within" : "far-outside";
  if (value >= prediction.low && value <= prediction.high) return "within";
  if (!Number.isFinite(value)) return "far-outside";
  const beyondWorst = value < prediction.worstLow || value > prediction.worstHigh;
  return beyondWorst && Math.abs(value - prediction.nominal) > FAR_SIGMAS * prediction.sigma ? "far-outside" : "outside";
}

const finite = (value: number | undefined): number | null => (value === undefined || !Number.isFinite(value) ? null : value);

/** Every reading beside its prediction, in the job's order. */
export function readingLines(model: ChassisModel): ReportReadingLine[] {
  return model.readings.map((reading) => {
    const prediction = predictReading(model, reading);
    const deviation =
      prediction === undefined || !Number.isFinite(prediction.sigma) || prediction.sigma === 0
        ? undefined
        : (reading.value - prediction.nominal) / prediction.sigma;
    const stage = model.stages.find(
      (candidate) => Object.values(candidate.points).includes(reading.at) || Object.values(candidate.parts).includes(reading.at),
    );
    return {
      at: reading.at,
      to: reading.to,
      quantity: reading.quantity,
      unit: READING_UNIT[reading.quantity],
      condition: reading.condition,
      life: reading.life,
      measured: finite(reading.value),
      meter: reading.meter.title,
      nominal: finite(prediction?.nominal),
      low: finite(prediction?.low),
      high: finite(prediction?.high),
      ...(reading.published === undefined || !Number.isFinite(reading.published.low) ? {} : { publishedLow: reading.published.low }),
      ...(reading.published === undefined || !Number.isFinite(reading.published.high) ? {} : { publishedHigh: reading.published.high }),
      verdict: verdictOf(reading, prediction),
      ...(deviation === undefined || !Number.isFinite(deviation) ? {} : { deviation }),
      contributors: (prediction?.contributors ?? [])
        .filter(({ share }) => share >= 0.01)
        .slice(0, 3)
        .map(({ part, parameter, share }) => {
          const distance = tubeDistance(model, part, reading.life);
          return `${part} ${parameter} ${Math.round(share * 100)} %${distance === undefined ? "" : ` (${distance})`}`;
        }),
      ...(stage === undefined ? {} : { stage: stage.id }),
      ...(reading.note === undefined ? {} : { note: reading.note }),
      location: reading.location,
    };
  });
}
