import { LEAST_DEVICE_OHMS, PORT_LEAK_SIEMENS } from "../constants.ts";
import type { Selenium } from "../network.ts";
import { onePort, type PortDevice } from "./port-device.ts";
import { softKnee } from "./soft-knee.ts";

/** Rounding of one plate's knee in volts; a plate's curve bends over about a tenth of a volt (from-memory). */
const SOFT_VOLTS_PER_PLATE = 0.03;

/** Selenium stack: the plates' knees and slopes in series. */
export function seleniumDevice(element: Selenium): PortDevice {
  const knee = element.plates * element.kneeVoltsPerPlate;
  const ohms = Math.max(element.plates * element.ohmsPerPlate, LEAST_DEVICE_OHMS);
  const soft = element.plates * SOFT_VOLTS_PER_PLATE;
  const leak = PORT_LEAK_SIEMENS + (element.reverseOhms === undefined ? 0 : 1 / element.reverseOhms);
  return onePort(element.id, element.nodes, 1e-4, leak, (volts, out) => softKnee(volts, knee, ohms, soft, out));
}
