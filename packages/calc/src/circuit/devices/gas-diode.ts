import { LEAST_DEVICE_OHMS, PORT_LEAK_SIEMENS } from "../constants.ts";
import type { GasDiode } from "../network.ts";
import { onePort, type PortDevice } from "./port-device.ts";
import { softKnee } from "./soft-knee.ts";

/** Rounding of the knee in volts: small against the arc drop of about 10 to 15 V. */
const SOFT_VOLTS = 0.1;

/** Gas-filled rectifier: an arc drop and a small slope. */
export function gasDiodeDevice(element: GasDiode): PortDevice {
  const ohms = Math.max(element.ohms, LEAST_DEVICE_OHMS);
  return onePort(element.id, element.nodes, 1e-4, PORT_LEAK_SIEMENS, (volts, out) =>
    softKnee(volts, element.dropVolts, ohms, SOFT_VOLTS, out),
  );
}
