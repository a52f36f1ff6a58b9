/** Constant operating points without tubes: dividers, leaky capacitors, regulators, heater strings. */
import type { Element } from "@underchassis/calc";
import type { CircuitCase } from "../oracle/case.ts";
import { CHASSIS, capacitor, choke, dcSource, network, resistor } from "./parts.ts";

const dc = { kind: "dc" } as const;

const gasTube = (id: string, anode: string, cathode: string, strikeVolts: number, operatingVolts: number): Element => ({
  kind: "gas-regulator",
  id,
  nodes: [anode, cathode],
  strikeVolts,
  operatingVolts,
  slopeOhms: 80,
  extinguishAmps: 0.004,
});

const filament = (id: string, a: string, b: string, hotOhms: number, amps: number): Element => ({
  kind: "filament",
  id,
  nodes: [a, b],
  coldOhms: hotOhms / 7,
  ratedOhms: hotOhms,
  ratedAmps: amps,
});

export const dcCircuits: readonly CircuitCase[] = [
  {
    name: "divider-with-meter",
    network: network(dcSource("B", "B+", CHASSIS, 300), resistor("R1", "B+", "tap", 1e6), resistor("R2", "tap", CHASSIS, 470e3), {
      kind: "voltmeter",
      id: "M1",
      nodes: ["tap", CHASSIS],
      ohms: 300 * 20e3,
    }),
    analysis: dc,
    plausible: { point: "tap", volts: 300 / (1 + 1e6 * (1 / 470e3 + 1 / 6e6)), within: 1e-6, formula: "divider with the meter across R2" },
  },
  {
    name: "bleeder-chain-taps",
    network: network(
      dcSource("B", "B+", CHASSIS, 425),
      choke("L1", "B+", "B1", 8, 220),
      resistor("R1", "B1", "B2", 5000),
      resistor("R2", "B2", "B3", 7500),
      resistor("R3", "B3", CHASSIS, 12e3),
      { kind: "current-source", id: "I2", nodes: ["B2", CHASSIS], amps: 0.012 },
      { kind: "current-source", id: "I3", nodes: ["B3", CHASSIS], amps: 0.004 },
      { kind: "switch", id: "S1", nodes: ["B3", "B4"], closed: true, contactOhms: 0.05 },
      { kind: "switch", id: "S2", nodes: ["B1", "B4"], closed: false },
      resistor("R4", "B4", CHASSIS, 47e3),
    ),
    analysis: dc,
  },
  {
    name: "leaky-coupling-capacitor",
    network: network(
      dcSource("B", "B+", CHASSIS, 250),
      resistor("Rp", "B+", "plate", 100e3),
      resistor("Rtube", "plate", CHASSIS, 150e3),
      capacitor("Cc", "plate", "grid", 0.01, { leakOhms: 20e6 }),
      resistor("Rg", "grid", CHASSIS, 470e3),
    ),
    analysis: dc,
  },
  {
    name: "series-capacitors-leaks-only",
    network: network(
      dcSource("B", "HV", CHASSIS, 700),
      capacitor("C1", "HV", "m1", 47, { leakOhms: 5e6 }),
      capacitor("C2", "m1", "m2", 47, { leakOhms: 2e6, esrOhms: 1 }),
      capacitor("C3", "m2", CHASSIS, 47, { leakOhms: 11e6 }),
      resistor("R1", "HV", "m1", 270e3),
      resistor("R2", "m1", "m2", 270e3),
      resistor("R3", "m2", CHASSIS, 330e3),
    ),
    analysis: dc,
  },
  {
    name: "gas-regulator-lit",
    network: network(
      dcSource("B", "B+", CHASSIS, 300),
      resistor("Rs", "B+", "reg", 5600),
      gasTube("VR", "reg", CHASSIS, 185, 150),
      resistor("Rload", "reg", CHASSIS, 15e3),
    ),
    analysis: dc,
    lit: { VR: true },
    plausible: { point: "reg", volts: 151.3, within: 0.003, formula: "150 V + 80 ohm x the tube's share of (300 - 150) / 5600 - 10 mA" },
  },
  {
    name: "gas-regulators-stacked",
    network: network(
      dcSource("B", "B+", CHASSIS, 420),
      resistor("Rs", "B+", "reg255", 6800),
      gasTube("VR1", "reg255", "reg105", 185, 150),
      gasTube("VR2", "reg105", CHASSIS, 133, 105),
      resistor("Rstart", "reg105", CHASSIS, 470e3),
      resistor("Rload", "reg105", CHASSIS, 27e3),
    ),
    analysis: dc,
    lit: { VR1: true, VR2: true },
  },
  {
    name: "gas-regulator-dark",
    network: network(
      dcSource("B", "B+", CHASSIS, 300),
      resistor("Rs", "B+", "reg", 12e3),
      gasTube("VR", "reg", CHASSIS, 185, 150),
      resistor("Rload", "reg", CHASSIS, 15e3),
    ),
    analysis: dc,
    lit: { VR: false },
    plausible: { point: "reg", volts: (300 * 15) / 27, within: 1e-6, formula: "divider, below the striking voltage" },
  },
  {
    name: "zener-shunt",
    network: network(
      dcSource("B", "B+", CHASSIS, 40),
      resistor("Rs", "B+", "reg", 1200),
      { kind: "zener", id: "Z1", nodes: [CHASSIS, "reg"], zenerVolts: 12, slopeOhms: 9 },
      resistor("Rload", "reg", CHASSIS, 1500),
    ),
    analysis: dc,
  },
  {
    name: "zener-stack-screen",
    network: network(
      dcSource("B", "B+", CHASSIS, 450),
      resistor("Rs", "B+", "screen", 15e3),
      { kind: "zener", id: "Z1", nodes: ["mid", "screen"], zenerVolts: 100, slopeOhms: 250 },
      { kind: "zener", id: "Z2", nodes: [CHASSIS, "mid"], zenerVolts: 91, slopeOhms: 200 },
      resistor("Rload", "screen", CHASSIS, 33e3),
    ),
    analysis: dc,
  },
  {
    name: "heater-string",
    network: network(
      dcSource("line", "line", CHASSIS, 117),
      filament("V5", "line", "h1", 35 / 0.15, 0.15),
      filament("V4", "h1", "h2", 50 / 0.15, 0.15),
      filament("V3", "h2", "h3", 12.6 / 0.15, 0.15),
      filament("V2", "h3", "h4", 12.6 / 0.15, 0.15),
      filament("V1", "h4", CHASSIS, 12.6 / 0.15, 0.15),
    ),
    analysis: dc,
  },
  {
    name: "heater-string-inrush-limiter",
    network: network(
      dcSource("line", "line", CHASSIS, 117),
      { kind: "thermistor", id: "NTC", nodes: ["line", "h0"], r25Ohms: 120, betaKelvin: 3000, deltaWattsPerKelvin: 0.017, tauSeconds: 60 },
      filament("V2", "h0", "h1", 60 / 0.15, 0.15),
      filament("V1", "h1", CHASSIS, 50 / 0.15, 0.15),
    ),
    analysis: dc,
  },
];
