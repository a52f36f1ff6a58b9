import type { Inductor } from "../network.ts";
import type { PortDevice } from "./port-device.ts";

/** Smallest winding resistance in ohms worked with, so that the choke has a current at DC. */
const LEAST_OHMS = 1e-3;

/**
 * Choke whose inductance L(i) = residual + (henries - residual)/(1 + (i/half)^2) falls with current, as a port with a
 * memory of its flux: lambda(i) = residual i + (henries - residual) half arctan(i/half), v = R i + d lambda/dt.
 */
export function swingChokeDevice(element: Inductor & { swing: NonNullable<Inductor["swing"]> }): PortDevice {
  const ohms = Math.max(element.dcrOhms ?? 0, LEAST_OHMS);
  const { residualHenries: residual, halfAmps: half } = element.swing;
  const falling = element.henries - residual;
  const fluxAt = (amps: number): number => residual * amps + falling * half * Math.atan(amps / half);
  const henriesAt = (amps: number): number => residual + falling / (1 + (amps / half) ** 2);
  /** Solves factor * lambda(i) + resistance * i = target; the left side rises steadily with i. */
  const solve = (target: number, factor: number, resistance: number, start: number): number => {
    let low = Number.NEGATIVE_INFINITY;
    let high = Number.POSITIVE_INFINITY;
    let amps = start;
    for (let pass = 0; pass < 100; pass++) {
      const left = factor * fluxAt(amps) + resistance * amps - target;
      if (left > 0) high = amps;
      else low = amps;
      let next = amps - left / (factor * henriesAt(amps) + resistance);
      if (next <= low || next >= high) next = Number.isFinite(low) && Number.isFinite(high) ? (low + high) / 2 : next;
      if (Math.abs(next - amps) <= 1e-13 * (Math.abs(next) + half)) return next;
      amps = next;
    }
    return amps;
  };
  const fluxEvaluate: NonNullable<PortDevice["flux"]>["evaluate"] = (scratch, at, startFlux, perSecond) => {
    const target = scratch.volts[at]! + startFlux * perSecond;
    const amps = solve(target, perSecond, ohms, 0);
    const slope = 1 / (ohms + henriesAt(amps) * perSecond);
    scratch.amps[at] = amps;
    scratch.slopes[at * scratch.width + at] = slope;
    scratch.fluxSlopes[at] = slope * perSecond;
  };
  return {
    id: element.id,
    ports: [element.nodes],
    lent: [1e-4],
    evaluate: (scratch, at) => fluxEvaluate(scratch, at, 0, 0),
    flux: { ohms, evaluate: fluxEvaluate, fluxAt, ampsAt: (flux) => solve(flux, 1, 0, flux / element.henries) },
  };
}
