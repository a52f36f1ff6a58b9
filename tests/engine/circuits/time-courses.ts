/** Switch-on from discharged, and discharge after switch-off. */
import type { Element } from "@underchassis/calc";
import type { CircuitCase, TransientAnalysis } from "../oracle/case.ts";
import {
  acSource,
  CHASSIS,
  capacitor,
  choke,
  dcSource,
  inputChoke,
  LINE_HERTZ,
  lineTransformer,
  network,
  resistor,
  silicon,
  vacuum,
} from "./parts.ts";

function switchOn(durationSeconds: number): TransientAnalysis {
  const sampleSeconds = [0.1, 0.2, 0.35, 0.5, 0.7, 0.85, 1].map((share) => share * durationSeconds);
  return { kind: "transient", durationSeconds, maxStepSeconds: 5e-6, sampleSeconds };
}

const fullWave = (rectifiers: readonly Element[]): Element[] => [
  ...lineTransformer([
    { id: "hv1", nodes: ["sec-a", CHASSIS], volts: 325, ohms: 110 },
    { id: "hv2", nodes: [CHASSIS, "sec-b"], volts: 325, ohms: 115 },
  ]),
  ...rectifiers,
];

const siliconPair = [silicon("D1", "sec-a", "rect", 20e6), silicon("D2", "sec-b", "rect", 20e6)];
const vacuumPair = [vacuum("V1a", "sec-a", "rect", "5Y3GT"), vacuum("V1b", "sec-b", "rect", "5Y3GT")];

/** From the crest of the line: the worst instant for a supply without iron. */
const CREST = Math.PI / 2;

export const timeCourses: readonly CircuitCase[] = [
  {
    name: "switch-on-transformerless-silicon-crest",
    network: network(
      acSource("line", "line", CHASSIS, 117, LINE_HERTZ, CREST),
      resistor("Rsurge", "line", "a", 33),
      silicon("D1", "a", "rect", 20e6),
      capacitor("C1", "rect", CHASSIS, 50, { esrOhms: 1 }),
      resistor("Rload", "rect", CHASSIS, 2700),
    ),
    analysis: switchOn(0.05),
  },
  {
    name: "switch-on-full-wave-silicon",
    network: network(fullWave(siliconPair), capacitor("C1", "rect", CHASSIS, 40), resistor("Rload", "rect", CHASSIS, 5000)),
    analysis: switchOn(0.06),
  },
  {
    name: "switch-on-full-wave-5y3-clc",
    network: network(
      fullWave(vacuumPair),
      capacitor("C1", "rect", CHASSIS, 16),
      choke("L1", "rect", "B+", 10, 250),
      capacitor("C2", "B+", CHASSIS, 16),
      resistor("Rload", "B+", CHASSIS, 20e3),
    ),
    analysis: switchOn(0.2),
  },
  {
    name: "switch-on-choke-input-overshoot",
    network: network(
      fullWave(siliconPair),
      inputChoke("L1", "rect", "B+", 8, 120),
      capacitor("C1", "B+", CHASSIS, 10),
      resistor("Rload", "B+", CHASSIS, 15e3),
    ),
    analysis: switchOn(0.15),
  },
  {
    name: "switch-on-doubler-silicon",
    network: network(
      acSource("line", "line", CHASSIS, 117),
      resistor("Rs", "line", "a", 22),
      capacitor("C1", "mid", "a", 47),
      silicon("D1", CHASSIS, "mid", 20e6),
      silicon("D2", "mid", "B+", 20e6),
      capacitor("C2", "B+", CHASSIS, 47),
      resistor("Rload", "B+", CHASSIS, 4700),
    ),
    analysis: switchOn(0.12),
  },
  {
    name: "dc-step-into-rlc",
    network: network(
      dcSource("B", "in", CHASSIS, 300),
      choke("L1", "in", "out", 10, 200),
      capacitor("C1", "out", CHASSIS, 8),
      resistor("Rload", "out", CHASSIS, 10e3),
    ),
    analysis: { ...switchOn(0.15), maxStepSeconds: 2e-5 },
  },
  {
    name: "discharge-bleeder",
    network: network(
      capacitor("C1", "B1", CHASSIS, 40),
      choke("L1", "B1", "B2", 8, 250),
      capacitor("C2", "B2", CHASSIS, 40),
      resistor("Rbleed", "B2", CHASSIS, 47e3),
    ),
    analysis: {
      kind: "discharge",
      durationSeconds: 20,
      maxStepSeconds: 2e-3,
      initialVolts: { C1: 400, C2: 380 },
      toVolts: 50,
      points: ["B1", "B2"],
    },
    plausible: { point: "B2", volts: 47e3 * 80e-6 * Math.log(390 / 50), within: 0.01, formula: "R C ln(V0 / V1), seconds" },
  },
  {
    name: "discharge-decoupling-chain",
    network: network(
      capacitor("C1", "B1", CHASSIS, 47),
      resistor("R1", "B1", "B2", 10e3),
      capacitor("C2", "B2", CHASSIS, 22),
      resistor("R2", "B2", "B3", 47e3),
      capacitor("C3", "B3", CHASSIS, 10),
      resistor("Rbleed", "B1", CHASSIS, 220e3),
      resistor("Rload", "B3", CHASSIS, 680e3),
    ),
    analysis: {
      kind: "discharge",
      durationSeconds: 60,
      maxStepSeconds: 5e-3,
      initialVolts: { C1: 350, C2: 330, C3: 250 },
      toVolts: 42.4,
      points: ["B1", "B2", "B3"],
    },
  },
  {
    name: "discharge-leak-only",
    network: network(capacitor("C1", "HV", CHASSIS, 16, { leakOhms: 4e6 }), {
      kind: "voltmeter",
      id: "M1",
      nodes: ["HV", CHASSIS],
      ohms: 10e6,
    }),
    analysis: { kind: "discharge", durationSeconds: 200, maxStepSeconds: 0.05, initialVolts: { C1: 500 }, toVolts: 50, points: ["HV"] },
    plausible: { point: "HV", volts: (16e-6 * Math.log(10)) / (1 / 4e6 + 1 / 10e6), within: 0.002, formula: "R C ln(V0 / V1), seconds" },
  },
];
