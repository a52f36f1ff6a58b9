import { PORT_LEAK_SIEMENS, THERMAL_VOLTS } from "../constants.ts";
import { junctionCurve } from "./diode.ts";
import type { CurvePoint } from "./port-device.ts";

/** Series resistance in ohms of the grid-current path when none is given (Koren, Glass Audio 8(5), 1996: 2 kilohm). */
const GRID_OHMS = 2000;
/** Saturation current in amperes of that diode: current starts a few tenths of a volt above zero (Koren 1996: 1 nA). */
const GRID_SATURATION_AMPS = 1e-9;

/** Grid current of a receiving tube: shape only; contact potential and gas current are not in it. */
export function gridCurve(gridVolts: number, gridOhms: number | undefined, out: CurvePoint): void {
  junctionCurve(gridVolts, GRID_SATURATION_AMPS, THERMAL_VOLTS, gridOhms ?? GRID_OHMS, out);
  // A negative grid takes no current but insulation leak; the junction's reverse current is no property of a tube.
  if (gridVolts < 0) {
    out.amps = 0;
    out.siemens = 0;
  }
  out.amps += PORT_LEAK_SIEMENS * gridVolts;
  out.siemens += PORT_LEAK_SIEMENS;
}
