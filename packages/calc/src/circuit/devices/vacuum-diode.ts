import { PORT_LEAK_SIEMENS } from "../constants.ts";
import type { VacuumDiode } from "../network.ts";
import { onePort, type PortDevice } from "./port-device.ts";

/** Vacuum diode by the three-halves power law (Child 1911, Langmuir 1913), no current in reverse. */
export function vacuumDiodeDevice(element: VacuumDiode): PortDevice {
  return onePort(element.id, element.nodes, 1e-4, PORT_LEAK_SIEMENS, (volts, out) => {
    const root = volts > 0 ? Math.sqrt(volts) : 0;
    out.amps = element.perveance * root * root * root;
    out.siemens = 1.5 * element.perveance * root;
  });
}
