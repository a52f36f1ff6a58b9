/** Sensitivities of some of the circuits: every kind of parameter at least once. */
import type { ParameterRef, Probe } from "@underchassis/calc";
import type { CircuitCase, DcAnalysis, SteadyAnalysis } from "../oracle/case.ts";
import { dcCircuits } from "./dc.ts";
import { filters } from "./filters.ts";
import { CHASSIS } from "./parts.ts";
import { rectifiers } from "./rectifiers.ts";
import { stages } from "./stages.ts";

const bases = [...rectifiers, ...filters, ...dcCircuits, ...stages];

const volts = (...points: readonly string[]): Probe[] => points.map((from) => ({ quantity: "dc-volts", from, to: CHASSIS }));
const ripple = (from: string): Probe => ({ quantity: "ripple-volts", from, to: CHASSIS });
const amps = (element: string): Probe => ({ quantity: "dc-amps", element });

/** `parameters` are written "R1 ohms". */
function of(base: string, probes: readonly Probe[], parameters: readonly string[]): CircuitCase {
  const circuit = bases.find(({ name }) => name === base);
  if (circuit === undefined) throw new Error(`no such circuit: ${base}`);
  const references = parameters.map((text): ParameterRef => {
    const [element = "", parameter = ""] = text.split(" ");
    return { element, parameter };
  });
  const analysis = circuit.analysis as SteadyAnalysis | DcAnalysis;
  return {
    name: `sensitivity-${base}`,
    network: circuit.network,
    analysis: { kind: "sensitivity", of: analysis, probes, parameters: references },
    ...(circuit.lit === undefined ? {} : { lit: circuit.lit }),
  };
}

export const sensitivityCircuits: readonly CircuitCase[] = [
  of(
    "clc-5y3",
    [...volts("rect", "B+"), ripple("rect"), ripple("B+"), amps("Rload")],
    ["line rmsVolts", "T1 hv2.ohms", "V1a perveance", "C1 farads", "L1 henries", "L1 dcrOhms", "C2 farads", "Rload ohms"],
  ),
  of(
    "transformerless-half-wave-silicon-heavy",
    [...volts("rect", "B+"), ripple("rect"), ripple("B+")],
    ["line rmsVolts", "Rsurge ohms", "C1 farads", "R1 ohms", "C2 farads", "Rload1 ohms", "Rload2 ohms"],
  ),
  of(
    "doubler-cascade-vacuum-heavy",
    [...volts("B+", "mid"), ripple("B+")],
    ["Rs ohms", "C1 farads", "C2 farads", "Rload ohms", "D2 perveance"],
  ),
  of(
    "half-wave-capacitor-vacuum-heavy",
    [...volts("rect", "B+"), ripple("rect"), amps("V1")],
    ["T1 hv.turns", "T1 primary.ohms", "V1 perveance"],
  ),
  of("gas-regulators-stacked", volts("reg255", "reg105"), [
    "B dcVolts",
    "Rs ohms",
    "VR1 operatingVolts",
    "VR2 operatingVolts",
    "Rload ohms",
  ]),
  of("zener-shunt", [...volts("reg"), amps("Z1")], ["B dcVolts", "Rs ohms", "Z1 zenerVolts", "Rload ohms"]),
  of("long-tail-pair", [...volts("plate1", "plate2", "cathode"), amps("V1a")], ["B dcVolts", "Rp1 ohms", "Rp2 ohms", "Rk ohms", "Rt ohms"]),
  of("triode-weak-12ax7", [...volts("plate", "cathode")], ["B dcVolts", "Rp ohms", "Rk ohms", "V1 emission"]),
  of("beam-output-6v6", [...volts("plate", "screen", "cathode"), amps("V1")], ["B dcVolts", "T1 primary.ohms", "Rk ohms", "Rs ohms"]),
  of("bleeder-chain-taps", volts("B1", "B2", "B3"), ["L1 dcrOhms", "R1 ohms", "R2 ohms", "R3 ohms", "I2 amps", "I3 amps", "R4 ohms"]),
];
