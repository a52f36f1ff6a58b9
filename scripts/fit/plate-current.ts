/**
 * The published phenomenological tube equations ("Improved vacuum-tube models for SPICE simulations", Glass Audio 8(5), 1996),
 * written down once more apart from the circuit engine, so that fits and dataset tests do not lean on what they check.
 */

export interface FittedParameters {
  mu: number;
  ex: number;
  kg1: number;
  kg2?: number;
  kp: number;
  kvb: number;
  vct?: number;
}

export interface ElectrodeVolts {
  plateVolts: number;
  screenVolts?: number;
  gridVolts: number;
}

/** ln(1 + e^x) without overflow: beyond 40 the difference from x is below 1e-17. */
function softplus(x: number): number {
  return x > 40 ? x : Math.log1p(Math.exp(x));
}

/**
 * Plate current in amperes; voltages in volts against the cathode. Triode when `screenVolts` is absent, else pentode.
 * The factor 2 of the published (1 + sgn) form is included. Zero for a plate at or below the cathode.
 */
export function plateAmps(parameters: FittedParameters, at: ElectrodeVolts): number {
  const { mu, ex, kg1, kp, kvb, vct = 0 } = parameters;
  if (at.plateVolts <= 0) return 0;
  const grid = at.gridVolts + vct;
  if (at.screenVolts === undefined) {
    const argument = kp * (1 / mu + grid / Math.sqrt(kvb + at.plateVolts ** 2));
    return (2 * ((at.plateVolts / kp) * softplus(argument)) ** ex) / kg1;
  }
  if (at.screenVolts <= 0) return 0;
  const effective = (at.screenVolts / kp) * softplus(kp * (1 / mu + grid / at.screenVolts));
  return ((2 * effective ** ex) / kg1) * Math.atan(at.plateVolts / kvb);
}

/** Screen current in amperes: (Eg + Eg2/mu)^1.5 / kg2 above cut-off, else 0. The exponent is the article's 1.5, not `ex`. */
export function screenAmps(parameters: FittedParameters, at: ElectrodeVolts): number {
  const { mu, kg2, vct = 0 } = parameters;
  if (at.screenVolts === undefined || kg2 === undefined) return 0;
  const drive = at.gridVolts + vct + at.screenVolts / mu;
  return drive > 0 ? drive ** 1.5 / kg2 : 0;
}

/** Transconductance in siemens, by central difference over 0.02 V. */
export function transconductance(parameters: FittedParameters, at: ElectrodeVolts): number {
  const up = plateAmps(parameters, { ...at, gridVolts: at.gridVolts + 0.01 });
  const down = plateAmps(parameters, { ...at, gridVolts: at.gridVolts - 0.01 });
  return (up - down) / 0.02;
}

/** Plate resistance in ohms, by central difference over 1 V. */
export function plateOhms(parameters: FittedParameters, at: ElectrodeVolts): number {
  const up = plateAmps(parameters, { ...at, plateVolts: at.plateVolts + 0.5 });
  const down = plateAmps(parameters, { ...at, plateVolts: at.plateVolts - 0.5 });
  return 1 / (up - down);
}
