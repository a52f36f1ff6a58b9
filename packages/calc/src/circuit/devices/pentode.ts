import { PORT_LEAK_SIEMENS } from "../constants.ts";
import type { Pentode } from "../network.ts";
import { gridCurve } from "./grid-current.ts";
import type { CurvePoint, PortDevice } from "./port-device.ts";

/** Plate and screen current in amperes with their slopes in siemens. */
export interface PentodePoint {
  plateAmps: number;
  perPlateVolt: number;
  perScreenVolt: number;
  perGridVolt: number;
  screenAmps: number;
  screenPerScreenVolt: number;
  screenPerGridVolt: number;
}

/** Exponent of the screen current: three halves, as in the article's text. */
const SCREEN_EXPONENT = 1.5;

/**
 * Koren's pentode equations (Glass Audio 8(5), 1996): E1 = (Es/kp) ln(1 + exp(kp (1/mu + (Eg + Vct)/Es))),
 * Ip = (2 E1^ex / kg1) arctan(Ep/kvb), Is = (Eg + Vct + Es/mu)^1.5 / kg2 where positive. Voltages against the cathode.
 * The screen current does not know the plate voltage, so it is too low when the plate swings below the knee.
 */
export function pentodeCurrents(element: Pentode, plateVolts: number, screenVolts: number, gridVolts: number, out: PentodePoint): void {
  const { mu, ex, kg1, kg2, kp, kvb, vct = 0 } = element.parameters;
  const emission = element.emission ?? 1;
  out.plateAmps = 0;
  out.perPlateVolt = 0;
  out.perScreenVolt = 0;
  out.perGridVolt = 0;
  out.screenAmps = 0;
  out.screenPerScreenVolt = 0;
  out.screenPerGridVolt = 0;
  if (screenVolts <= 0) return;
  const drive = gridVolts + vct;
  const screenDrive = drive + screenVolts / mu;
  if (screenDrive > 0) {
    const slope = (emission * SCREEN_EXPONENT * screenDrive ** (SCREEN_EXPONENT - 1)) / kg2;
    out.screenAmps = (slope * screenDrive) / SCREEN_EXPONENT;
    out.screenPerScreenVolt = slope / mu;
    out.screenPerGridVolt = slope;
  }
  if (plateVolts <= 0) return;
  const exponent = kp * (1 / mu + drive / screenVolts);
  const soft = exponent > 40 ? exponent : Math.log1p(Math.exp(exponent));
  const share = exponent > 40 ? 1 : 1 / (1 + Math.exp(-exponent));
  const e1 = (screenVolts / kp) * soft;
  const power = e1 > 0 ? e1 ** (ex - 1) : 0;
  const scale = (2 * emission) / kg1;
  const angle = Math.atan(plateVolts / kvb);
  const slope = scale * ex * power * angle;
  out.plateAmps = scale * power * e1 * angle;
  out.perPlateVolt = (scale * power * e1 * kvb) / (kvb * kvb + plateVolts * plateVolts);
  out.perScreenVolt = slope * (soft / kp - (share * drive) / screenVolts);
  out.perGridVolt = slope * share;
}

/** Pentode or beam tube: ports plate-cathode, screen-cathode and grid-cathode. */
export function pentodeDevice(element: Pentode): PortDevice {
  const { plate, screen, grid, cathode } = element.nodes;
  const gridPoint: CurvePoint = { amps: 0, siemens: 0 };
  const point: PentodePoint = {
    plateAmps: 0,
    perPlateVolt: 0,
    perScreenVolt: 0,
    perGridVolt: 0,
    screenAmps: 0,
    screenPerScreenVolt: 0,
    screenPerGridVolt: 0,
  };
  return {
    id: element.id,
    ports: [
      [plate, cathode],
      [screen, cathode],
      [grid, cathode],
    ],
    lent: [1e-5, 1e-5, 1e-7],
    evaluate(scratch, at) {
      const { volts, amps, slopes, width } = scratch;
      const plateVolts = volts[at]!;
      const screenVolts = volts[at + 1]!;
      const gridVolts = volts[at + 2]!;
      pentodeCurrents(element, plateVolts, screenVolts, gridVolts, point);
      gridCurve(gridVolts, element.parameters.gridOhms, gridPoint);
      amps[at] = point.plateAmps + PORT_LEAK_SIEMENS * plateVolts;
      amps[at + 1] = point.screenAmps + PORT_LEAK_SIEMENS * screenVolts;
      amps[at + 2] = gridPoint.amps;
      const plateRow = at * width + at;
      slopes[plateRow] = point.perPlateVolt + PORT_LEAK_SIEMENS;
      slopes[plateRow + 1] = point.perScreenVolt;
      slopes[plateRow + 2] = point.perGridVolt;
      const screenRow = plateRow + width;
      slopes[screenRow] = 0;
      slopes[screenRow + 1] = point.screenPerScreenVolt + PORT_LEAK_SIEMENS;
      slopes[screenRow + 2] = point.screenPerGridVolt;
      const gridRow = screenRow + width;
      slopes[gridRow] = 0;
      slopes[gridRow + 1] = 0;
      slopes[gridRow + 2] = gridPoint.siemens;
    },
  };
}
