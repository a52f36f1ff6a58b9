/** Ohmmeter readings on some of the circuits, with a meter that turns no junction on and with one that does. */
import type { CircuitCase } from "../oracle/case.ts";
import { filters } from "./filters.ts";
import { CHASSIS } from "./parts.ts";
import { rectifiers } from "./rectifiers.ts";
import { stages } from "./stages.ts";

const bases = [...rectifiers, ...filters, ...stages];

function of(base: string, meter: "low-voltage" | "diode-test", pairs: readonly (readonly [string, string])[]): CircuitCase {
  const circuit = bases.find(({ name }) => name === base);
  if (circuit === undefined) throw new Error(`no such circuit: ${base}`);
  const test = meter === "low-voltage" ? { testVolts: 0.3, maxAmps: 1e-3 } : { testVolts: 2, maxAmps: 1e-3 };
  return { name: `ohms-${meter}-${base}`, network: circuit.network, analysis: { kind: "ohmmeter", pairs, ...test } };
}

export const unplugged: readonly CircuitCase[] = [
  of("clc-5y3", "low-voltage", [
    ["rect", CHASSIS],
    ["B+", CHASSIS],
    ["rect", "B+"],
    ["sec-a", "sec-b"],
    ["sec-a", CHASSIS],
    ["sec-a", "rect"],
  ]),
  of("back-bias-negative-return", "low-voltage", [
    ["ct", CHASSIS],
    ["rect", CHASSIS],
    ["sec-a", CHASSIS],
    ["rect", "ct"],
    ["line", CHASSIS],
  ]),
  of("long-tail-pair", "low-voltage", [
    ["plate1", "plate2"],
    ["plate1", CHASSIS],
    ["cathode", CHASSIS],
    ["grid1", "grid2"],
    ["B+", "plate1"],
  ]),
  of("beam-output-6v6", "low-voltage", [
    ["plate", "screen"],
    ["plate", CHASSIS],
    ["cathode", CHASSIS],
    ["speaker", CHASSIS],
    ["grid", CHASSIS],
  ]),
  of("crcrc-chain", "low-voltage", [
    ["rect", "B3"],
    ["rect", CHASSIS],
    ["B3", CHASSIS],
    ["sec-b", CHASSIS],
  ]),
  of("bias-adjustable-divider", "low-voltage", [
    ["neg", CHASSIS],
    ["bias", CHASSIS],
    ["grid", CHASSIS],
    ["neg", "grid"],
    ["tap", "neg"],
  ]),
  of("bias-adjustable-divider", "diode-test", [
    ["neg", CHASSIS],
    [CHASSIS, "neg"],
    ["neg", "tap"],
    ["bias", CHASSIS],
    [CHASSIS, "bias"],
  ]),
  of("transformerless-half-wave-silicon-heavy", "diode-test", [
    ["a", "rect"],
    ["line", CHASSIS],
    ["B+", CHASSIS],
    [CHASSIS, "B+"],
  ]),
  of("heater-dc-bridge-low-volts", "diode-test", [
    ["sec-a", "dc"],
    ["dc", CHASSIS],
    [CHASSIS, "dc"],
    ["sec-a", "sec-b"],
  ]),
];
