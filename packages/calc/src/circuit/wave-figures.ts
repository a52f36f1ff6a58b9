import { type Peak, peakBetween } from "./extremum.ts";

/** Mean, RMS and extremes of a waveform sampled at the stages of a march. */
export interface WaveFigures {
  mean: number;
  rms: number;
  max: number;
  min: number;
}

/**
 * Figures of one period of a waveform. Means follow the scheme's own quadrature, so that the mean current of a capacitor
 * is zero to rounding; extremes are sought at the ends of steps, where the scheme is of second order, and between them.
 *
 * @param values one value a stage
 * @param weights share of the span of each stage
 * @param stagesPerStep 2 for a period, 1 for a constant point
 */
export function waveFigures(values: Float64Array, weights: Float64Array, stagesPerStep: number): WaveFigures {
  let mean = 0;
  let square = 0;
  for (let k = 0; k < values.length; k++) {
    const value = values[k]!;
    const weight = weights[k]!;
    mean += weight * value;
    square += weight * value * value;
  }
  return { mean, rms: Math.sqrt(square), max: extreme(values, stagesPerStep, 1), min: -extreme(values, stagesPerStep, -1) };
}

/** Highest value of `sign` times a periodic waveform. */
function extreme(values: Float64Array, stride: number, sign: 1 | -1): number {
  let best = stride - 1;
  for (let k = stride - 1; k < values.length; k += stride) if (sign * values[k]! > sign * values[best]!) best = k;
  return peakAt(values, stride, sign, (best + 1) / stride - 1).value;
}

/** The peak of `sign` times a periodic waveform about the end of one step. */
export function peakAt(values: Float64Array, stride: number, sign: 1 | -1, step: number): Peak {
  const count = values.length / stride;
  const at = (offset: number): number => sign * values[((step + offset + count) % count) * stride + stride - 1]!;
  if (count < 8) return { value: at(0), weights: [0, 0, 1, 0, 0] };
  return peakBetween([at(-2), at(-1), at(0), at(1), at(2)]);
}

/** RMS of a waveform less its mean, computed about the mean so that a small ripple on a high voltage keeps its digits. */
export function alternatingRms(values: Float64Array, weights: Float64Array): number {
  let mean = 0;
  for (let k = 0; k < values.length; k++) mean += weights[k]! * values[k]!;
  let square = 0;
  for (let k = 0; k < values.length; k++) square += weights[k]! * (values[k]! - mean) ** 2;
  return Math.sqrt(square);
}

/** Mean of the product of two waveforms. */
export function meanProduct(a: Float64Array, b: Float64Array, weights: Float64Array): number {
  let sum = 0;
  for (let k = 0; k < a.length; k++) sum += weights[k]! * a[k]! * b[k]!;
  return sum;
}
