import type { Fault } from "./fault.ts";
import type { Fit } from "./likelihood.ts";

/** A fault with what the readings say of it. */
export interface Judged {
  fault: Fault;
  /** What goes into the network; differs from the fault where a family puts its value in by an edit of its own. */
  edit: Fault;
  prior: number;
  /** ln of prior times likelihood, a range's value integrated out; not yet normalised. */
  logWeight: number;
  fit: Fit;
  /** Scaled readings, by observable; NaN where not simulated yet. */
  predicted: Float64Array;
  /** Where its value may lie at all, when it has one to estimate. */
  range?: readonly [number, number];
  /** Values that hold most of the weight of a range. */
  low?: number;
  high?: number;
  /** A drifted part beside it. */
  second?: Fault;
}

/** A fault with one value, or none. */
export function judgedOf(fault: Fault, edit: Fault, prior: number, predicted: Float64Array, fit: Fit): Judged {
  return { fault, edit, prior, logWeight: Math.log(prior) + fit.logLikelihood, fit, predicted };
}
