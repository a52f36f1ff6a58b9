import type { Pair } from "../network.ts";

/** Where a device writes what it found: currents, slopes and, for a device with memory, its response to that memory. */
export interface PortScratch {
  /** Port voltages in volts. */
  volts: Float64Array;
  /** Port currents in amperes, from the first point of the port through the device. */
  amps: Float64Array;
  /** Row-major slopes d amps[row] / d volts[column] in siemens. */
  slopes: Float64Array;
  /** Number of ports, the row length of `slopes`. */
  width: number;
  /** Memory ports only: d amps / d (flux at the start of the stage), in 1/henry. */
  fluxSlopes: Float64Array;
}

/** A device seen from its ports: currents as a function of port voltages. */
export interface PortDevice {
  id: string;
  ports: readonly Pair[];
  /** Conductance in siemens typical of each port: it is lent to the linear network and taken back from the device, to keep both well conditioned. */
  lent: readonly number[];
  /** Evaluates at `scratch.volts[at...]`, writing currents and slopes of the same rows. */
  evaluate(scratch: PortScratch, at: number): void;
  /** A device that stores flux: evaluated with the flux at the start of the stage (volt-seconds) and 1/(stage step) in 1/seconds (0 at DC). */
  flux?: {
    ohms: number;
    evaluate(scratch: PortScratch, at: number, startFlux: number, perSecond: number): void;
    /** Flux in volt-seconds at a current in amperes. */
    fluxAt(amps: number): number;
    /** Current in amperes at a flux in volt-seconds. */
    ampsAt(flux: number): number;
  };
}

/** A curve i(v) of a two-lead device, written into a reused pair. */
export interface CurvePoint {
  amps: number;
  siemens: number;
}

/** Makes a one-port device of a curve, adding a leak in siemens across it. */
export function onePort(
  id: string,
  nodes: Pair,
  lentSiemens: number,
  leakSiemens: number,
  curve: (volts: number, out: CurvePoint) => void,
): PortDevice {
  const point: CurvePoint = { amps: 0, siemens: 0 };
  return {
    id,
    ports: [nodes],
    lent: [lentSiemens],
    evaluate(scratch, at) {
      const volts = scratch.volts[at]!;
      curve(volts, point);
      scratch.amps[at] = point.amps + leakSiemens * volts;
      scratch.slopes[at * scratch.width + at] = point.siemens + leakSiemens;
    },
  };
}

/**
 * Room for a device, or all devices of a circuit, with so many ports.
 *
 * @param volts port voltages in volts, used as they are; zero unless given
 */
export function portScratch(width: number, volts: Float64Array = new Float64Array(width)): PortScratch {
  return { volts, amps: new Float64Array(width), slopes: new Float64Array(width * width), width, fluxSlopes: new Float64Array(width) };
}
