import { PORT_LEAK_SIEMENS } from "../constants.ts";
import type { Triode } from "../network.ts";
import { gridCurve } from "./grid-current.ts";
import type { CurvePoint, PortDevice } from "./port-device.ts";

/** Plate current of a triode in amperes and its slopes in siemens. */
export interface TriodePoint {
  amps: number;
  perPlateVolt: number;
  perGridVolt: number;
}

/**
 * Koren's triode equation (Glass Audio 8(5), 1996): E1 = (Ep/kp) ln(1 + exp(kp (1/mu + (Eg + Vct)/sqrt(kvb + Ep^2)))),
 * Ip = 2 E1^ex / kg1 for E1 > 0. No current at or below zero plate volts. Voltages against the cathode.
 */
export function triodePlate(element: Triode, plateVolts: number, gridVolts: number, out: TriodePoint): void {
  const { mu, ex, kg1, kp, kvb, vct = 0 } = element.parameters;
  if (plateVolts <= 0) {
    out.amps = 0;
    out.perPlateVolt = 0;
    out.perGridVolt = 0;
    return;
  }
  const drive = gridVolts + vct;
  const squared = kvb + plateVolts * plateVolts;
  const root = Math.sqrt(squared);
  const exponent = kp * (1 / mu + drive / root);
  const soft = exponent > 40 ? exponent : Math.log1p(Math.exp(exponent));
  const share = exponent > 40 ? 1 : 1 / (1 + Math.exp(-exponent));
  const e1 = (plateVolts / kp) * soft;
  const scale = (2 * (element.emission ?? 1)) / kg1;
  const power = e1 > 0 ? e1 ** (ex - 1) : 0;
  out.amps = scale * power * e1;
  const slope = scale * ex * power;
  const e1PerPlate = soft / kp - (share * plateVolts * plateVolts * drive) / (squared * root);
  out.perPlateVolt = slope * e1PerPlate;
  out.perGridVolt = (slope * plateVolts * share) / root;
}

/** Triode: ports plate-cathode and grid-cathode. */
export function triodeDevice(element: Triode): PortDevice {
  const { plate, grid, cathode } = element.nodes;
  const point: TriodePoint = { amps: 0, perPlateVolt: 0, perGridVolt: 0 };
  const gridPoint: CurvePoint = { amps: 0, siemens: 0 };
  return {
    id: element.id,
    ports: [
      [plate, cathode],
      [grid, cathode],
    ],
    lent: [1e-5, 1e-7],
    evaluate(scratch, at) {
      const plateVolts = scratch.volts[at]!;
      const gridVolts = scratch.volts[at + 1]!;
      triodePlate(element, plateVolts, gridVolts, point);
      gridCurve(gridVolts, element.parameters.gridOhms, gridPoint);
      const { slopes, amps, width } = scratch;
      amps[at] = point.amps + PORT_LEAK_SIEMENS * plateVolts;
      amps[at + 1] = gridPoint.amps;
      slopes[at * width + at] = point.perPlateVolt + PORT_LEAK_SIEMENS;
      slopes[at * width + at + 1] = point.perGridVolt;
      slopes[(at + 1) * width + at] = 0;
      slopes[(at + 1) * width + at + 1] = gridPoint.siemens;
    },
  };
}
