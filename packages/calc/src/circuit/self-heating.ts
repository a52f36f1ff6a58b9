import type { Circuit } from "./circuit.ts";
import type { Filament, Thermistor } from "./network.ts";

/** Exponent of a lamp's resistance against current unless the element gives one (contract of `Filament`). */
const LAMP_EXPONENT = 1.2;
const ROOM_KELVIN = 298.15;
const HOTTEST_KELVIN = 650;

/** Resistance in ohms of a filament or fuse wire carrying an RMS current in amperes. */
export function filamentOhms(element: Filament, rmsAmps: number): number {
  const share = (Math.abs(rmsAmps) / element.ratedAmps) ** (element.exponent ?? LAMP_EXPONENT);
  return element.coldOhms + (element.ratedOhms - element.coldOhms) * share;
}

/** Resistance in ohms of a thermistor at a temperature in kelvins. */
export function thermistorOhms(element: Thermistor, kelvin: number): number {
  return element.r25Ohms * Math.exp(element.betaKelvin * (1 / kelvin - 1 / 298.15));
}

/** What is known of one self-heated element: its last resistance and current, and how its current answers its resistance. */
interface Heated {
  ohms: number;
  amps: number;
  /** I is proportional to R^-fall nearby: 0 behind a stiff current, 1 across a stiff voltage. */
  fall: number;
}

/**
 * Finds the resistances of filaments and thermistors that agree with the currents they carry: a fixed point over whole
 * steady states, each element following a local power law of its current against its resistance.
 */
export class SelfHeating {
  readonly ohms = new Map<string, number>();
  private readonly known = new Map<string, Heated>();
  private replanned = false;

  /** @param start resistances of an earlier solution, by element */
  constructor(elements: Iterable<Filament | Thermistor>, start: ReadonlyMap<string, number> | undefined) {
    for (const element of elements) {
      const first = element.kind === "filament" ? element.ratedOhms : thermistorOhms(element, element.ambientKelvin ?? ROOM_KELVIN);
      this.ohms.set(element.id, start?.get(element.id) ?? first);
    }
  }

  /** The currents that follow come from another plan of steps: their difference from the last says nothing of the circuit. */
  replan(): void {
    this.replanned = true;
  }

  /**
   * Takes in the RMS currents of a steady state.
   *
   * @returns the largest relative change of a resistance that they call for; the new ones stand in `ohms`
   */
  update(circuit: Pick<Circuit, "elements">, rmsAmps: (id: string) => number): number {
    let largest = 0;
    for (const [id, ohms] of this.ohms) {
      const element = circuit.elements.get(id) as Filament | Thermistor;
      const amps = Math.max(rmsAmps(id), 1e-12);
      const before = this.known.get(id);
      let fall = before?.fall ?? 0.3;
      if (before !== undefined && !this.replanned && Math.abs(Math.log(ohms / before.ohms)) > 1e-9) {
        fall = Math.min(1.2, Math.max(0, -Math.log(amps / before.amps) / Math.log(ohms / before.ohms)));
      }
      this.known.set(id, { ohms, amps, fall });
      const next = element.kind === "filament" ? settleFilament(element, ohms, amps, fall) : settleThermistor(element, ohms, amps, fall);
      this.ohms.set(id, next);
      largest = Math.max(largest, Math.abs(next / ohms - 1));
    }
    this.replanned = false;
    return largest;
  }
}

function bisect(low: number, high: number, rising: (ohms: number) => number): number {
  let from = Math.log(low);
  let to = Math.log(high);
  for (let pass = 0; pass < 60; pass++) {
    const middle = (from + to) / 2;
    if (rising(Math.exp(middle)) > 0) to = middle;
    else from = middle;
  }
  return Math.exp((from + to) / 2);
}

function settleFilament(element: Filament, ohms: number, amps: number, fall: number): number {
  const excess = (candidate: number): number => candidate - filamentOhms(element, amps * (ohms / candidate) ** fall);
  const low = Math.min(element.coldOhms, element.ratedOhms) / 10;
  let high = Math.max(element.coldOhms, element.ratedOhms, ohms);
  while (excess(high) < 0 && high < 1e12) high *= 4;
  return bisect(low, high, excess);
}

/** Coming from cold, the first balance of heating and cooling is where a thermistor stays. */
function settleThermistor(element: Thermistor, ohms: number, amps: number, fall: number): number {
  const ambient = element.ambientKelvin ?? ROOM_KELVIN;
  const excess = (candidate: number): number => {
    const watts = (amps * (ohms / candidate) ** fall) ** 2 * candidate;
    return candidate - thermistorOhms(element, Math.min(ambient + watts / element.deltaWattsPerKelvin, 3000));
  };
  const steps = 400;
  let above = thermistorOhms(element, ambient);
  for (let k = 1; k <= steps; k++) {
    const kelvin = ambient + ((HOTTEST_KELVIN - ambient) * k) / steps;
    const below = thermistorOhms(element, kelvin);
    if (excess(below) <= 0) return bisect(below, above, excess);
    above = below;
  }
  return above;
}

/** Relative change of a thermistor's resistance per watt of heat, in 1/watts. */
function thermistorPerWatt(element: Thermistor, ohms: number): number {
  const kelvin = 1 / (1 / 298.15 + Math.log(ohms / element.r25Ohms) / element.betaKelvin);
  return -element.betaKelvin / (kelvin * kelvin) / element.deltaWattsPerKelvin;
}

/**
 * Share of a relative change of a thermistor's resistance that remains, at constant RMS current in amperes, after its
 * temperature has followed: more resistance makes more heat, which lowers it again.
 */
export function thermistorRelief(element: Thermistor, ohms: number, rmsAmps: number): number {
  return 1 / (1 - thermistorPerWatt(element, ohms) * rmsAmps * rmsAmps * ohms);
}

/** Relative change of a thermistor's resistance per ampere of RMS current, once its temperature has followed. In 1/amperes. */
export function thermistorSlope(element: Thermistor, ohms: number, rmsAmps: number): number {
  return thermistorPerWatt(element, ohms) * 2 * rmsAmps * ohms * thermistorRelief(element, ohms, rmsAmps);
}
