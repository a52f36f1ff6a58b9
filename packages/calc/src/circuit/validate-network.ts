import type { Element, Network } from "./network.ts";
import { CircuitError } from "./solution.ts";

/** Fields that must be finite and above zero, and fields that must be finite and not below zero, by kind. */
const POSITIVE: Partial<Record<Element["kind"], readonly string[]>> = {
  capacitor: ["farads", "leakOhms"],
  inductor: ["henries"],
  transformer: ["magnetizingHenries"],
  filament: ["coldOhms", "ratedOhms", "ratedAmps", "exponent"],
  diode: ["saturationAmps", "emission", "reverseOhms"],
  selenium: ["plates", "reverseOhms"],
  "vacuum-diode": ["perveance"],
  "gas-regulator": ["strikeVolts", "operatingVolts"],
  zener: ["zenerVolts"],
  thermistor: ["r25Ohms", "betaKelvin", "deltaWattsPerKelvin", "tauSeconds", "ambientKelvin"],
  voltmeter: ["ohms"],
};
const NOT_NEGATIVE: Partial<Record<Element["kind"], readonly string[]>> = {
  resistor: ["ohms"],
  capacitor: ["esrOhms"],
  inductor: ["dcrOhms"],
  switch: ["contactOhms"],
  "voltage-source": ["rmsVolts", "hertz"],
  diode: ["ohms"],
  selenium: ["kneeVoltsPerPlate", "ohmsPerPlate"],
  "gas-diode": ["dropVolts", "ohms"],
  "gas-regulator": ["slopeOhms", "extinguishAmps"],
  zener: ["slopeOhms"],
  triode: ["emission"],
  pentode: ["emission"],
};
const FINITE: Partial<Record<Element["kind"], readonly string[]>> = {
  "voltage-source": ["dcVolts", "phaseRadians"],
  "current-source": ["amps"],
};
const TUBE_POSITIVE = ["mu", "ex", "kg1", "kp", "kvb"];

function refuse(id: string, field: string, value: unknown, wanted: string): never {
  throw new CircuitError("bad-value", `${id}: ${field} is ${String(value)}, expected ${wanted}`, [], [id]);
}

function checkFields(id: string, holder: object, fields: readonly string[], accept: (value: number) => boolean, wanted: string): void {
  for (const field of fields) {
    const value = (holder as Record<string, unknown>)[field];
    if (value === undefined) continue;
    if (typeof value !== "number" || !accept(value)) refuse(id, field, value, wanted);
  }
}

const positive = (value: number): boolean => value > 0 && Number.isFinite(value);
const finite = (value: number): boolean => Number.isFinite(value);

/**
 * Checks the values of a network: unique element names, finite numbers of the right sign.
 *
 * @throws CircuitError `bad-value` naming the element and the field
 */
export function validateNetwork(network: Network): void {
  const seen = new Set<string>();
  for (const element of network.elements) {
    const { id, kind } = element;
    if (seen.has(id)) throw new CircuitError("bad-value", `two elements are called ${id}`, [], [id]);
    seen.add(id);
    checkFields(id, element, POSITIVE[kind] ?? [], positive, "a number above zero");
    checkFields(id, element, NOT_NEGATIVE[kind] ?? [], (value) => value >= 0 && Number.isFinite(value), "a number not below zero");
    checkFields(id, element, FINITE[kind] ?? [], finite, "a finite number");
    if (element.kind === "transformer") {
      if (element.windings.length === 0) refuse(id, "windings", "empty", "at least one winding");
      for (const winding of element.windings) {
        const name = `${id}.${winding.id}`;
        checkFields(name, winding, ["ohms"], (value) => value >= 0 && Number.isFinite(value), "a number not below zero");
        checkFields(name, winding, ["turns"], (value) => value !== 0 && Number.isFinite(value), "a number other than zero");
      }
    }
    if (element.kind === "triode" || element.kind === "pentode") {
      const fields = element.kind === "pentode" ? [...TUBE_POSITIVE, "kg2"] : TUBE_POSITIVE;
      checkFields(id, element.parameters, [...fields, "gridOhms"], positive, "a number above zero");
      checkFields(id, element.parameters, ["vct"], finite, "a finite number");
    }
    if (element.kind === "inductor" && element.swing !== undefined) {
      checkFields(id, element.swing, ["residualHenries", "halfAmps"], positive, "a number above zero");
      if (element.swing.residualHenries > element.henries) refuse(id, "residualHenries", element.swing.residualHenries, "at most henries");
    }
    if (element.kind === "voltage-source" && (element.rmsVolts ?? 0) > 0 && !((element.hertz ?? 0) > 0)) {
      refuse(id, "hertz", element.hertz, "a frequency above zero beside rmsVolts");
    }
  }
}
