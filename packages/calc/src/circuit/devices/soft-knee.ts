import type { CurvePoint } from "./port-device.ts";

/**
 * Knee at `kneeVolts` followed by a slope of `ohms`, rounded over `softVolts`: i = (s/R) ln(1 + exp((v - knee)/s)).
 * Well above the knee it is (v - knee)/R; well below it is nothing.
 */
export function softKnee(volts: number, kneeVolts: number, ohms: number, softVolts: number, out: CurvePoint): void {
  const u = (volts - kneeVolts) / softVolts;
  if (u > 40) {
    out.amps = (volts - kneeVolts) / ohms;
    out.siemens = 1 / ohms;
  } else if (u < -40) {
    const e = Math.exp(Math.max(u, -700));
    out.amps = (softVolts / ohms) * e;
    out.siemens = e / ohms;
  } else {
    const e = Math.exp(u);
    out.amps = (softVolts / ohms) * Math.log1p(e);
    out.siemens = e / (1 + e) / ohms;
  }
}
