import type { Sensitivities } from "./solution.ts";

/** A share below and above the nominal value: { minus: 0.1, plus: 0.5 } is -10 +50 %. */
export interface RelativeTolerance {
  minus: number;
  plus: number;
}

/** Where a probe may lie when every part may lie anywhere within its tolerance. */
export interface ProbeWindow {
  nominal: number;
  /** Value with every part at the middle of its tolerance; it differs from nominal for asymmetric tolerances. */
  mean: number;
  /** mean - 2 sigma and mean + 2 sigma. */
  low: number;
  high: number;
  /** Standard deviation, parts independent and evenly spread. */
  sigma: number;
  /** Every part at the limit that moves the probe furthest down, or up. */
  worstLow: number;
  worstHigh: number;
}

/** Windows of all probes and the covariance between them (row-major, probes x probes, in the units of the probes). */
export interface Windows {
  probes: ProbeWindow[];
  covariance: Float64Array;
}

const COVERAGE = 2;

/**
 * Tolerance windows of probes, to first order in the tolerances. A part is taken as evenly spread over its tolerance, so
 * its sigma is half the width over the square root of 3 (the usual reading of a limit without further knowledge: JCGM
 * 100:2008, 4.3.7); low and high are two sigma about the mean.
 *
 * @param tolerances one for each parameter, in the order of `sensitivities.parameters`; numbers mean plus or minus
 * @throws RangeError when their number differs
 */
export function toleranceWindow(sensitivities: Sensitivities, tolerances: readonly (number | RelativeTolerance)[]): Windows {
  const { matrix, values, parameters } = sensitivities;
  const count = parameters.length;
  if (tolerances.length !== count) throw new RangeError(`${tolerances.length} tolerances for ${count} parameters`);
  const limits = tolerances.map((tolerance) => (typeof tolerance === "number" ? { minus: tolerance, plus: tolerance } : tolerance));
  const probes = Array.from(values, (nominal, row): ProbeWindow => {
    let mean = nominal;
    let variance = 0;
    let worstLow = nominal;
    let worstHigh = nominal;
    limits.forEach(({ minus, plus }, k) => {
      const slope = matrix[row * count + k]!;
      mean += (slope * (plus - minus)) / 2;
      variance += ((slope * (plus + minus)) / 2) ** 2 / 3;
      worstLow += Math.min(-slope * minus, slope * plus);
      worstHigh += Math.max(-slope * minus, slope * plus);
    });
    const sigma = Math.sqrt(variance);
    return {
      nominal,
      mean,
      sigma,
      low: Math.max(worstLow, mean - COVERAGE * sigma),
      high: Math.min(worstHigh, mean + COVERAGE * sigma),
      worstLow,
      worstHigh,
    };
  });
  const size = values.length;
  const covariance = new Float64Array(size * size);
  for (let a = 0; a < size; a++) {
    for (let b = 0; b <= a; b++) {
      let sum = 0;
      limits.forEach(({ minus, plus }, k) => {
        sum += (matrix[a * count + k]! * matrix[b * count + k]! * ((plus + minus) / 2) ** 2) / 3;
      });
      covariance[a * size + b] = sum;
      covariance[b * size + a] = sum;
    }
  }
  return { probes, covariance };
}
