import { Curve } from "./curve.ts";
import { editAt, type Family, faultAt } from "./family.ts";
import type { Fault } from "./fault.ts";
import type { Judged } from "./judged.ts";
import { type Fit, type FitOptions, type Likelihood, logSum } from "./likelihood.ts";

/** Values of a range at which its likelihood is looked at. */
const QUADRATURE = 24;
const GOLDEN_STEPS = 12;
/** A value keeps company whose log likelihood falls short of the best by no more than this. */
const KEPT = 2;
/** How far from the value found with few steps a range is looked at with many. */
const RETRACE = 1.2;

interface Point {
  value: number;
  predicted: Float64Array;
  fit: Fit;
}

/** What is sought to be largest. */
type Height = (point: Point) => number;
const likely: Height = ({ fit }) => fit.logLikelihood;
const closeness: Height = ({ fit }) => -fit.squares;

/**
 * A fault with a value to estimate, from readings against that value.
 *
 * @param range values that it may have, even in the logarithm before the readings
 * @returns the likeliest value, and the weight with the value integrated out
 */
export function judgeRange(
  family: Family,
  kind: Fault["kind"],
  range: readonly [number, number],
  prior: number,
  curve: Curve,
  likelihood: Likelihood,
  loose: number,
): Judged {
  const [low, high] = range;
  const span = Math.log(high / low);
  const look = (value: number): Point => {
    const predicted = curve.at(value);
    return { value, predicted, fit: likelihood.fit(predicted, { loose }) };
  };
  const points = Array.from({ length: QUADRATURE }, (_, k) => look(low * (high / low) ** ((k + 0.5) / QUADRATURE)));
  const step = Math.exp(span / QUADRATURE);
  const coarse = points.reduce((a, b) => (b.fit.logLikelihood > a.fit.logLikelihood ? b : a));
  const around = (point: Point, height?: Height) =>
    golden(point, look, Math.max(low, point.value / step), Math.min(high, point.value * step), height);
  // Where every value of the grid takes a reading for a slip, a peak between two of them shows by the deviations alone.
  const nearest =
    coarse.fit.slip === undefined
      ? coarse
      : around(
          points.reduce((a, b) => (closeness(b) > closeness(a) ? b : a)),
          closeness,
        );
  const best = around(nearest.fit.logLikelihood > coarse.fit.logLikelihood ? nearest : coarse);
  const width = peakWidth(best, look, step, range);
  // A peak that the grid is too coarse for counts by its height and width, whether one of the values hit it or none.
  const narrow = width < Math.log(step);
  const even = narrow ? points.filter(({ value }) => Math.abs(Math.log(value / best.value)) > Math.log(step)) : points;
  const weights = even.map(({ fit }) => fit.logLikelihood - Math.log(QUADRATURE));
  if (narrow) weights.push(best.fit.logLikelihood + Math.log(width / span));
  const kept = points.filter(({ fit }) => fit.logLikelihood > best.fit.logLikelihood - KEPT).map(({ value }) => value);
  // Between two values of the grid it is the peak itself that says how far one may go.
  if (narrow)
    for (const direction of [1, -1]) kept.push(best.value * Math.exp((direction * Math.sqrt(2 * KEPT) * width) / Math.sqrt(2 * Math.PI)));
  return {
    fault: faultAt(family, kind, best.value),
    edit: editAt(family, best.value),
    prior,
    logWeight: Math.log(prior) + logSum(weights),
    fit: best.fit,
    predicted: best.predicted,
    range,
    low: Math.max(low, Math.min(best.value, ...kept)),
    high: Math.min(high, Math.max(best.value, ...kept)),
  };
}

/** Area under a peak of height one within a range, in the logarithm of the value: that of the normal curve which falls as fast. */
function peakWidth(best: Point, look: (value: number) => Point, step: number, [low, high]: readonly [number, number]): number {
  const half = (direction: 1 | -1): number => {
    let distance = Math.log(step);
    for (let k = 0; k < GOLDEN_STEPS; k += 1) {
      const fall = best.fit.logLikelihood - look(best.value * Math.exp(direction * distance)).fit.logLikelihood;
      if (fall <= 1) return fall <= 0 ? distance : distance / Math.sqrt(2 * fall);
      distance /= 2;
    }
    return distance;
  };
  const side = (direction: 1 | -1, room: number) => (room <= 0 ? 0 : Math.min(room, Math.sqrt(Math.PI / 2) * half(direction)));
  return side(1, Math.log(high / best.value)) + side(-1, Math.log(best.value / low));
}

/** Golden section on the logarithm of the value. */
function golden(best: Point, look: (value: number) => Point, from: number, to: number, height: Height = likely): Point {
  let [low, high] = [from, to];
  let top = best;
  for (let k = 0; k < GOLDEN_STEPS; k += 1) {
    const [at, other] = [look(low * (high / low) ** 0.382), look(low * (high / low) ** 0.618)];
    const better = height(at) > height(other) ? at : other;
    if (better === at) high = other.value;
    else low = at.value;
    if (height(better) > height(top)) top = better;
  }
  return top;
}

/**
 * A range looked at again with many steps: what few steps made of the value is mended.
 *
 * @param predict scaled readings with the edit at a value
 * @returns as it was where it has no value, or cannot be simulated
 */
export function retraced(
  judged: Judged,
  predict: (edit: Fault) => Float64Array | undefined,
  likelihood: Likelihood,
  options: FitOptions,
): Judged | undefined {
  const { range, edit } = judged;
  const value = edit.value;
  if (range === undefined || value === undefined) return undefined;
  const values = [Math.max(range[0], value / RETRACE), value, Math.min(range[1], value * RETRACE)].filter(
    (each, index, all) => index === 0 || each > 1.001 * all[index - 1]!,
  );
  const known = values.flatMap((each) => {
    const predicted = predict({ ...edit, value: each });
    return predicted === undefined ? [] : [{ each, predicted }];
  });
  if (known.length < 2) return undefined;
  const curve = new Curve(
    known.map(({ each }) => each),
    known.map(({ predicted }) => predicted),
  );
  const look = (each: number): Point => {
    const predicted = curve.at(each);
    return { value: each, predicted, fit: likelihood.fit(predicted, options) };
  };
  const best = golden(look(value), look, known[0]!.each, known.at(-1)!.each);
  const { fault, fit, logWeight, low, high } = judged;
  const moved = best.value / value;
  return {
    ...judged,
    ...(low === undefined ? {} : { low: Math.max(range[0], low * moved) }),
    ...(high === undefined ? {} : { high: Math.min(range[1], high * moved) }),
    fault: { ...fault, value: best.value },
    edit: { ...edit, value: best.value },
    fit: best.fit,
    predicted: best.predicted,
    logWeight: logWeight + best.fit.logLikelihood - fit.logLikelihood,
  };
}
