import { LEAST_DEVICE_OHMS, PORT_LEAK_SIEMENS, THERMAL_VOLTS } from "../constants.ts";
import type { Zener } from "../network.ts";
import { junctionCurve } from "./diode.ts";
import { onePort, type PortDevice } from "./port-device.ts";
import { softKnee } from "./soft-knee.ts";

/** Saturation current in amperes of the forward junction: about 0.6 V at 10 mA (common-practice). */
const FORWARD_SATURATION_AMPS = 1e-12;
/** Rounding of the reverse knee in volts: above about 0.1 mA the voltage is zenerVolts plus slope times current. */
const SOFT_VOLTS = 0.002;

/** Zener diode, anode first: a junction forwards, a knee at zenerVolts with its slope backwards. */
export function zenerDevice(element: Zener): PortDevice {
  const ohms = Math.max(element.slopeOhms, LEAST_DEVICE_OHMS);
  return onePort(element.id, element.nodes, 1e-4, PORT_LEAK_SIEMENS, (volts, out) => {
    if (volts > -element.zenerVolts / 2) junctionCurve(volts, FORWARD_SATURATION_AMPS, THERMAL_VOLTS, ohms, out);
    else {
      softKnee(-volts, element.zenerVolts, ohms, SOFT_VOLTS, out);
      out.amps = -out.amps - FORWARD_SATURATION_AMPS;
    }
  });
}
