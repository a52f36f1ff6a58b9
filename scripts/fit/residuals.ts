import { type ElectrodeVolts, type FittedParameters, plateAmps, screenAmps, transconductance } from "./plate-current.ts";

/** A published operating point of a tube record, SI units. */
export interface PublishedPoint {
  service: string;
  unit?: number;
  plateVolts?: number;
  screenVolts?: number;
  gridVolts?: number;
  cathodeOhms?: number;
  plateAmps?: number;
  screenAmps?: number;
  siemens?: number;
  plateOhms?: number;
}

/** Shares by which a model misses a published value (0.05: 5 % too much); absent where nothing is published. */
export interface Residuals {
  plate: number;
  screen?: number;
  siemens?: number;
}

/** How a record states one point's residuals: `point` counts the entries of `typical` from 1. */
export interface Distance {
  point: number;
  plateAmps: number;
  screenAmps?: number;
  transconductance?: number;
}

/** Voltages of a published point; bias by a cathode resistor becomes grid volts from the published currents. */
export function voltsOf(point: PublishedPoint): ElectrodeVolts | undefined {
  const { plateVolts, screenVolts, plateAmps: plate, screenAmps: screen = 0, cathodeOhms } = point;
  if (plateVolts === undefined || plate === undefined) return undefined;
  const gridVolts = point.gridVolts ?? (cathodeOhms === undefined ? undefined : -cathodeOhms * (plate + screen));
  if (gridVolts === undefined) return undefined;
  return screenVolts === undefined ? { plateVolts, gridVolts } : { plateVolts, screenVolts, gridVolts };
}

/** How far the model misses a published point. */
export function residualsAt(parameters: FittedParameters, point: PublishedPoint): Residuals | undefined {
  const at = voltsOf(point);
  if (!at || point.plateAmps === undefined) return undefined;
  return {
    plate: plateAmps(parameters, at) / point.plateAmps - 1,
    ...(point.screenAmps === undefined ? {} : { screen: screenAmps(parameters, at) / point.screenAmps - 1 }),
    ...(point.siemens === undefined ? {} : { siemens: transconductance(parameters, at) / point.siemens - 1 }),
  };
}

/**
 * Distances of one unit's model from the points of its record that belong to it, rounded to a tenth of a percent.
 *
 * @param parameters model parameters of the unit
 * @param typical the record's published points, all of them
 * @param unit which entry of the record's units it is, counted from 1
 */
export function distancesOf(parameters: FittedParameters, typical: readonly PublishedPoint[], unit: number): Distance[] {
  // Adding 0 turns -0, which JSON does not know, into 0.
  const share = (value: number) => Number(value.toFixed(3)) + 0;
  return typical.flatMap((point, i) => {
    const misses = (point.unit ?? 1) === unit ? residualsAt(parameters, point) : undefined;
    if (!misses) return [];
    return [
      {
        point: i + 1,
        plateAmps: share(misses.plate),
        ...(misses.screen === undefined ? {} : { screenAmps: share(misses.screen) }),
        ...(misses.siemens === undefined ? {} : { transconductance: share(misses.siemens) }),
      },
    ];
  });
}
