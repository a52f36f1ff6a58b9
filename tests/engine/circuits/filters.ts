/** Filters behind a rectifier, bias supplies, regulators on a rippling supply, other rectifiers. */
import type { Element } from "@underchassis/calc";
import { type CircuitCase, STOPPING_CHOKE } from "../oracle/case.ts";
import { CHASSIS, capacitor, choke, inputChoke, LINE_HERTZ, lineTransformer, network, resistor, silicon, vacuum } from "./parts.ts";

const steady = { kind: "steady", hertz: LINE_HERTZ } as const;

/** 2 x 325 V behind a 5Y3GT, to the point `rect`. */
const fullWave: Element[] = [
  ...lineTransformer(
    [
      { id: "hv1", nodes: ["sec-a", CHASSIS], volts: 325, ohms: 130 },
      { id: "hv2", nodes: [CHASSIS, "sec-b"], volts: 325, ohms: 140 },
    ],
    { primaryOhms: 4, magnetizingHenries: 4 },
  ),
  vacuum("V1a", "sec-a", "rect", "5Y3GT"),
  vacuum("V1b", "sec-b", "rect", "5Y3GT"),
];

/** A 50 V tap behind one silicon diode, output negative. */
const biasFeed: Element[] = [
  ...lineTransformer([{ id: "bias", nodes: ["tap", CHASSIS], volts: 50, ohms: 30 }]),
  silicon("D1", "neg", "tap", 20e6),
  capacitor("C1", CHASSIS, "neg", 25),
];

export const filters: readonly CircuitCase[] = [
  {
    name: "clc-5y3",
    network: network(
      fullWave,
      capacitor("C1", "rect", CHASSIS, 16, { esrOhms: 2, leakOhms: 2e6 }),
      choke("L1", "rect", "B+", 8, 250),
      capacitor("C2", "B+", CHASSIS, 16, { esrOhms: 2, leakOhms: 2e6 }),
      resistor("Rload", "B+", CHASSIS, 4700),
    ),
    analysis: steady,
    plausible: { point: "rect", volts: 345, within: 0.1, formula: "1.41 x 325 V less rectifier drop, winding drop, half the ripple" },
  },
  {
    name: "clc-tired-capacitors",
    network: network(
      fullWave,
      capacitor("C1", "rect", CHASSIS, 2, { esrOhms: 60, leakOhms: 40e3 }),
      choke("L1", "rect", "B+", 8, 250),
      capacitor("C2", "B+", CHASSIS, 3, { esrOhms: 100, leakOhms: 60e3 }),
      resistor("Rload", "B+", CHASSIS, 4700),
    ),
    analysis: steady,
  },
  {
    name: "crcrc-chain",
    network: network(
      fullWave,
      capacitor("C1", "rect", CHASSIS, 40, { esrOhms: 1 }),
      resistor("R1", "rect", "B1", 330),
      capacitor("C2", "B1", CHASSIS, 20),
      resistor("R2", "B1", "B2", 4700),
      capacitor("C3", "B2", CHASSIS, 20),
      resistor("R3", "B2", "B3", 22e3),
      capacitor("C4", "B3", CHASSIS, 10),
      resistor("Rload1", "B1", CHASSIS, 6200),
      resistor("Rload2", "B2", CHASSIS, 68e3),
      resistor("Rload3", "B3", CHASSIS, 180e3),
    ),
    analysis: steady,
  },
  {
    name: "swinging-choke-bleeder",
    network: network(
      fullWave,
      { kind: "inductor", id: "L1", nodes: ["rect", "B+"], henries: 20, dcrOhms: 120, swing: { residualHenries: 3, halfAmps: 0.06 } },
      resistor("L1iron", "rect", "B+", 470e3),
      capacitor("C1", "B+", CHASSIS, 30),
      resistor("Rbleed", "B+", CHASSIS, 25e3),
      resistor("Rload", "B+", CHASSIS, 6800),
    ),
    analysis: steady,
  },
  {
    name: "choke-below-critical",
    network: network(
      fullWave,
      inputChoke("L1", "rect", "B+", 3, 90),
      capacitor("C1", "B+", CHASSIS, 20),
      resistor("Rload", "B+", CHASSIS, 30e3),
    ),
    analysis: steady,
    tolerance: STOPPING_CHOKE,
  },
  {
    name: "constant-current-load",
    network: network(
      fullWave,
      capacitor("C1", "rect", CHASSIS, 20),
      choke("L1", "rect", "B+", 10, 300),
      capacitor("C2", "B+", CHASSIS, 20),
      {
        kind: "current-source",
        id: "Iload",
        nodes: ["B+", CHASSIS],
        amps: 0.07,
      },
    ),
    analysis: steady,
  },
  {
    name: "series-capacitors-balanced-unequal-leak",
    network: network(
      lineTransformer([{ id: "hv", nodes: ["sec-a", "sec-b"], volts: 550, ohms: 90 }]),
      resistor("Rins1", "sec-a", CHASSIS, 20e6),
      resistor("Rins2", "sec-b", CHASSIS, 20e6),
      silicon("D1", "sec-a", "HV", 20e6),
      silicon("D2", "sec-b", "HV", 20e6),
      silicon("D3", CHASSIS, "sec-a", 20e6),
      silicon("D4", CHASSIS, "sec-b", 20e6),
      capacitor("C1", "HV", "mid", 100, { leakOhms: 150e3 }),
      capacitor("C2", "mid", CHASSIS, 100, { leakOhms: 1e6 }),
      resistor("R1", "HV", "mid", 100e3),
      resistor("R2", "mid", CHASSIS, 100e3),
      resistor("Rload", "HV", CHASSIS, 12e3),
    ),
    analysis: { ...steady, settlePeriods: 60 },
  },
  {
    name: "series-capacitors-slow-high-ohm-balance",
    network: network(
      lineTransformer([{ id: "hv", nodes: ["sec-a", CHASSIS], volts: 400, ohms: 200 }]),
      vacuum("V1", "sec-a", "HV", "6X4"),
      capacitor("C1", "HV", "mid", 47, { leakOhms: 3e6 }),
      capacitor("C2", "mid", CHASSIS, 47, { leakOhms: 8e6 }),
      resistor("R1", "HV", "mid", 470e3),
      resistor("R2", "mid", CHASSIS, 470e3),
      resistor("Rload", "HV", CHASSIS, 100e3),
    ),
    analysis: { ...steady, settlePeriods: 120 },
  },
  {
    name: "selenium-half-wave",
    network: network(
      lineTransformer([{ id: "hv", nodes: ["sec-a", CHASSIS], volts: 125, ohms: 30 }]),
      { kind: "selenium", id: "D1", nodes: ["sec-a", "rect"], plates: 6, kneeVoltsPerPlate: 0.6, ohmsPerPlate: 5, reverseOhms: 100e3 },
      capacitor("C1", "rect", CHASSIS, 40),
      resistor("Rload", "rect", CHASSIS, 2700),
    ),
    analysis: steady,
  },
  {
    name: "mercury-choke-input",
    network: network(
      lineTransformer([
        { id: "hv1", nodes: ["sec-a", CHASSIS], volts: 600, ohms: 60 },
        { id: "hv2", nodes: [CHASSIS, "sec-b"], volts: 600, ohms: 62 },
      ]),
      { kind: "gas-diode", id: "V1", nodes: ["sec-a", "rect"], dropVolts: 15, ohms: 4 },
      { kind: "gas-diode", id: "V2", nodes: ["sec-b", "rect"], dropVolts: 15, ohms: 4 },
      inputChoke("L1", "rect", "B+", 10, 100),
      capacitor("C1", "B+", CHASSIS, 10),
      resistor("Rload", "B+", CHASSIS, 4000),
    ),
    analysis: steady,
    plausible: { point: "B+", volts: 0.9 * 600 - 15 - 0.127 * 180, within: 0.04, formula: "0.9 x RMS less the gas drop and I R" },
  },
  {
    name: "bias-half-wave",
    network: network(
      biasFeed,
      resistor("R1", "neg", "bias", 10e3),
      capacitor("C2", CHASSIS, "bias", 25),
      resistor("Rload", "bias", CHASSIS, 47e3),
    ),
    analysis: steady,
    plausible: { point: "neg", volts: -68, within: 0.05, formula: "-(1.41 x 50 V) less drop and sag" },
  },
  {
    name: "bias-adjustable-divider",
    network: network(
      biasFeed,
      resistor("R1", "neg", "b1", 4700),
      capacitor("C2", CHASSIS, "b1", 50),
      resistor("R2", "b1", "bias", 22e3),
      resistor("R3", "bias", CHASSIS, 33e3),
      resistor("Rgrid", "bias", "grid", 220e3),
      { kind: "voltmeter", id: "M1", nodes: ["grid", CHASSIS], ohms: 10e6 },
    ),
    analysis: steady,
  },
  {
    name: "back-bias-negative-return",
    network: network(
      lineTransformer([
        { id: "hv1", nodes: ["sec-a", "ct"], volts: 300, ohms: 120 },
        { id: "hv2", nodes: ["ct", "sec-b"], volts: 300, ohms: 125 },
      ]),
      resistor("Rback", "ct", CHASSIS, 270),
      vacuum("V1a", "sec-a", "rect", "6X4"),
      vacuum("V1b", "sec-b", "rect", "6X4"),
      capacitor("C1", "rect", "ct", 16),
      choke("L1", "rect", "B+", 10, 350),
      capacitor("C2", "B+", CHASSIS, 16),
      resistor("Rload", "B+", CHASSIS, 5600),
    ),
    analysis: steady,
  },
  {
    name: "gas-regulator-on-supply",
    network: network(
      fullWave,
      capacitor("C1", "rect", CHASSIS, 20),
      resistor("Rs", "rect", "reg", 9100),
      {
        kind: "gas-regulator",
        id: "VR",
        nodes: ["reg", CHASSIS],
        strikeVolts: 180,
        operatingVolts: 150,
        slopeOhms: 85,
        extinguishAmps: 0.005,
      },
      resistor("Rload", "reg", CHASSIS, 20e3),
    ),
    analysis: steady,
    lit: { VR: true },
    plausible: { point: "reg", volts: 151, within: 0.01, formula: "operating volts and slope" },
  },
  {
    name: "heater-dc-bridge-low-volts",
    network: network(
      lineTransformer([{ id: "heater", nodes: ["sec-a", "sec-b"], volts: 6.3, ohms: 0.06 }], { primaryOhms: 3 }),
      resistor("Rins1", "sec-a", CHASSIS, 1e6),
      resistor("Rins2", "sec-b", CHASSIS, 1e6),
      silicon("D1", "sec-a", "dc", 1e6),
      silicon("D2", "sec-b", "dc", 1e6),
      silicon("D3", CHASSIS, "sec-a", 1e6),
      silicon("D4", CHASSIS, "sec-b", 1e6),
      capacitor("C1", "dc", CHASSIS, 10000, { esrOhms: 0.03 }),
      resistor("Rheater", "dc", CHASSIS, 10.5),
    ),
    analysis: steady,
  },
];
