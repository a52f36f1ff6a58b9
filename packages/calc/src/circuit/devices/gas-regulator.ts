import { PORT_LEAK_SIEMENS } from "../constants.ts";
import type { GasRegulator } from "../network.ts";
import { onePort, type PortDevice } from "./port-device.ts";
import { softKnee } from "./soft-knee.ts";

/** Gas regulator tube: dark it only leaks; lit it holds operatingVolts plus slope times current, and takes nothing below. */
export function gasRegulatorDevice(element: GasRegulator, lit: boolean): PortDevice {
  const ohms = Math.max(element.slopeOhms, 1e-2);
  // The rounding has died out long before the current falls to the extinction limit.
  const soft = Math.max((ohms * element.extinguishAmps) / 20, 1e-3);
  return onePort(element.id, element.nodes, 1e-4, PORT_LEAK_SIEMENS, (volts, out) => {
    if (lit) softKnee(volts, element.operatingVolts, ohms, soft, out);
    else {
      out.amps = 0;
      out.siemens = 0;
    }
  });
}
