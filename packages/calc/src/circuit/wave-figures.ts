/** Mean, RMS and extremes of a waveform sampled at the stages of a march. */
export interface WaveFigures {
  mean: number;
  rms: number;
  max: number;
  min: number;
}

/**
 * Figures of a waveform over its span. Means follow the scheme's own quadrature, so that the mean current of a capacitor
 * is zero to rounding; extremes are taken at the ends of steps only, where the scheme is of second order.
 *
 * @param values one value a stage
 * @param weights share of the span of each stage
 * @param stagesPerStep 2 for a march, 1 for a constant point
 */
export function waveFigures(values: Float64Array, weights: Float64Array, stagesPerStep: number): WaveFigures {
  let mean = 0;
  let square = 0;
  let max = Number.NEGATIVE_INFINITY;
  let min = Number.POSITIVE_INFINITY;
  for (let k = 0; k < values.length; k++) {
    const value = values[k]!;
    const weight = weights[k]!;
    mean += weight * value;
    square += weight * value * value;
    if ((k + 1) % stagesPerStep !== 0) continue;
    if (value > max) max = value;
    if (value < min) min = value;
  }
  return { mean, rms: Math.sqrt(square), max, min };
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
