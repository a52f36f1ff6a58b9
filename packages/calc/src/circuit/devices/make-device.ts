import type { Element } from "../network.ts";
import { diodeDevice } from "./diode.ts";
import { gasDiodeDevice } from "./gas-diode.ts";
import { gasRegulatorDevice } from "./gas-regulator.ts";
import { pentodeDevice } from "./pentode.ts";
import type { PortDevice } from "./port-device.ts";
import { seleniumDevice } from "./selenium.ts";
import { swingChokeDevice } from "./swing-choke.ts";
import { triodeDevice } from "./triode.ts";
import { vacuumDiodeDevice } from "./vacuum-diode.ts";
import { zenerDevice } from "./zener.ts";

/** The port device of a nonlinear element, or undefined when the element is linear. `lit` matters to gas regulators only. */
export function makeDevice(element: Element, lit: boolean): PortDevice | undefined {
  switch (element.kind) {
    case "diode":
      return diodeDevice(element);
    case "selenium":
      return seleniumDevice(element);
    case "vacuum-diode":
      return vacuumDiodeDevice(element);
    case "gas-diode":
      return gasDiodeDevice(element);
    case "gas-regulator":
      return gasRegulatorDevice(element, lit);
    case "zener":
      return zenerDevice(element);
    case "triode":
      return triodeDevice(element);
    case "pentode":
      return pentodeDevice(element);
    case "inductor":
      return element.swing === undefined ? undefined : swingChokeDevice({ ...element, swing: element.swing });
    default:
      return undefined;
  }
}
