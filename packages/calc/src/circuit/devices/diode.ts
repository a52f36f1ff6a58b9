import { LEAST_DEVICE_OHMS, PORT_LEAK_SIEMENS, THERMAL_VOLTS } from "../constants.ts";
import type { Diode } from "../network.ts";
import { type CurvePoint, onePort, type PortDevice } from "./port-device.ts";
import { wrightOmega } from "./wright-omega.ts";

/**
 * Current of a junction i = is (exp(vj/(n Vt)) - 1) in series with a resistance, as a function of the voltage across both.
 * (Shockley's equation, solved for the current with the Wright omega function.)
 */
export function junctionCurve(volts: number, saturationAmps: number, slopeVolts: number, ohms: number, out: CurvePoint): void {
  const z = (volts + saturationAmps * ohms) / slopeVolts + Math.log((saturationAmps * ohms) / slopeVolts);
  const w = wrightOmega(z);
  out.amps = (slopeVolts / ohms) * w - saturationAmps;
  out.siemens = w / (1 + w) / ohms;
}

/** Semiconductor diode as a port device; `reverseOhms` lies across it. */
export function diodeDevice(element: Diode): PortDevice {
  const slopeVolts = element.emission * THERMAL_VOLTS;
  const ohms = Math.max(element.ohms, LEAST_DEVICE_OHMS);
  const leak = PORT_LEAK_SIEMENS + (element.reverseOhms === undefined ? 0 : 1 / element.reverseOhms);
  return onePort(element.id, element.nodes, 1e-4, leak, (volts, out) =>
    junctionCurve(volts, element.saturationAmps, slopeVolts, ohms, out),
  );
}
