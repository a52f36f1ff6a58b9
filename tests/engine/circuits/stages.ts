/** Tube stages: operating points, a driven stage, and small-signal gains. */
import type { Element } from "@underchassis/calc";
import type { CircuitCase } from "../oracle/case.ts";
import { acSource, CHASSIS, capacitor, dcSource, network, pentode, resistor, triode } from "./parts.ts";

const dc = { kind: "dc" } as const;

const supply = (volts: number): Element => dcSource("B", "B+", CHASSIS, volts);

/** Resistance-coupled 12AX7: 250 V, 100 k plate, 1.5 k cathode. */
const voltageAmplifier = (emission?: number): Element[] => [
  supply(250),
  resistor("Rg", "grid", CHASSIS, 1e6),
  resistor("Rp", "B+", "plate", 100e3),
  resistor("Rk", "cathode", CHASSIS, 1500),
  triode("V1", "12AX7", { plate: "plate", grid: "grid", cathode: "cathode" }, emission),
];

const transformerPrimary = (nodes: readonly [string, string]): Element => ({
  kind: "transformer",
  id: "T1",
  windings: [
    { id: "primary", nodes, turns: 35, ohms: 260 },
    { id: "voice", nodes: ["speaker", CHASSIS], turns: 1, ohms: 0.3 },
  ],
  magnetizingHenries: 9,
});

/** Self-biased 6V6 with its output transformer and loudspeaker. */
const beamOutput: Element[] = [
  supply(265),
  transformerPrimary(["B+", "plate"]),
  resistor("Rspeaker", "speaker", CHASSIS, 3.2),
  resistor("Rg", "grid", CHASSIS, 470e3),
  resistor("Rk", "cathode", CHASSIS, 270),
  capacitor("Ck", "cathode", CHASSIS, 25),
  resistor("Rs", "B+", "screen", 1000),
  pentode("V1", "6V6", { plate: "plate", screen: "screen", grid: "grid", cathode: "cathode" }),
];

/** EF86 as a microphone amplifier: screen fed through 1 M with a bypass. */
const pentodeAmplifier: Element[] = [
  supply(270),
  resistor("Rg", "grid", CHASSIS, 1e6),
  resistor("Rp", "B+", "plate", 220e3),
  resistor("Rs", "B+", "screen", 1e6),
  capacitor("Cs", "screen", CHASSIS, 0.1),
  resistor("Rk", "cathode", CHASSIS, 2200),
  capacitor("Ck", "cathode", CHASSIS, 50),
  pentode("V1", "EF86", { plate: "plate", screen: "screen", grid: "grid", cathode: "cathode" }),
];

/** Longtail pair: 12AX7, grids at the same level through the tail, 12 k tail on the 1.2 k bias resistor. */
const longTail: Element[] = [
  supply(300),
  resistor("Rp1", "B+", "plate1", 82e3),
  resistor("Rp2", "B+", "plate2", 100e3),
  resistor("Rk", "cathode", "tail", 820),
  resistor("Rt", "tail", CHASSIS, 22e3),
  resistor("Rg1", "grid1", "tail", 1e6),
  resistor("Rg2", "grid2", "tail", 1e6),
  triode("V1a", "12AX7", { plate: "plate1", grid: "grid1", cathode: "cathode" }),
  triode("V1b", "12AX7", { plate: "plate2", grid: "grid2", cathode: "cathode" }),
];

/** A signal source in front of a coupling capacitor. */
const driven = (volts: number, hertz: number, grid = "grid"): Element[] => [
  acSource("signal", "in", CHASSIS, volts, hertz),
  capacitor("Cin", "in", grid, 0.047),
];

export const stages: readonly CircuitCase[] = [
  { name: "triode-self-bias-12ax7", network: network(voltageAmplifier()), analysis: dc },
  { name: "triode-weak-12ax7", network: network(voltageAmplifier(0.5)), analysis: dc },
  {
    name: "triode-self-bias-6sn7",
    network: network(
      supply(250),
      resistor("Rg", "grid", CHASSIS, 470e3),
      resistor("Rp", "B+", "plate", 47e3),
      resistor("Rk", "cathode", CHASSIS, 1500),
      triode("V1", "6SN7", { plate: "plate", grid: "grid", cathode: "cathode" }),
    ),
    analysis: dc,
  },
  {
    name: "triode-fixed-point-12au7",
    network: network(
      supply(250),
      dcSource("C", "grid", CHASSIS, -8.5),
      triode("V1", "12AU7", { plate: "B+", grid: "grid", cathode: CHASSIS }),
    ),
    analysis: dc,
  },
  {
    name: "triode-cut-off",
    network: network(
      supply(300),
      dcSource("C", "grid", CHASSIS, -40),
      resistor("Rp", "B+", "plate", 47e3),
      triode("V1", "6SN7", { plate: "plate", grid: "grid", cathode: CHASSIS }),
    ),
    analysis: dc,
  },
  { name: "pentode-self-bias-ef86", network: network(pentodeAmplifier), analysis: dc },
  {
    name: "pentode-6au6-divider-screen",
    network: network(
      supply(200),
      resistor("Rg", "grid", CHASSIS, 470e3),
      resistor("Rp", "B+", "plate", 33e3),
      resistor("Rs1", "B+", "screen", 47e3),
      resistor("Rs2", "screen", CHASSIS, 33e3),
      resistor("Rk", "cathode", CHASSIS, 330),
      pentode("V1", "6AU6", { plate: "plate", screen: "screen", grid: "grid", cathode: "cathode" }),
    ),
    analysis: dc,
  },
  { name: "beam-output-6v6", network: network(beamOutput), analysis: dc },
  {
    name: "beam-fixed-bias-pair-6l6gc",
    network: network(
      supply(400),
      dcSource("C", "bias", CHASSIS, -35),
      resistor("Rg1", "grid1", "bias", 100e3),
      resistor("Rg2", "grid2", "bias", 100e3),
      { kind: "inductor", id: "L1", nodes: ["B+", "plate1"], henries: 12, dcrOhms: 80 },
      { kind: "inductor", id: "L2", nodes: ["B+", "plate2"], henries: 12, dcrOhms: 92 },
      resistor("Rs", "B+", "screen", 470),
      pentode("V1", "6L6GC", { plate: "plate1", screen: "screen", grid: "grid1", cathode: CHASSIS }),
      pentode("V2", "6L6GC", { plate: "plate2", screen: "screen", grid: "grid2", cathode: "k2" }),
      resistor("Rk2", "k2", CHASSIS, 10),
    ),
    analysis: dc,
  },
  {
    name: "power-pentode-el34",
    network: network(
      supply(270),
      resistor("Rg", "grid", CHASSIS, 220e3),
      resistor("Ropt", "B+", "plate", 150),
      resistor("Rs", "B+", "screen", 1000),
      resistor("Rk", "cathode", CHASSIS, 120),
      pentode("V1", "EL34", { plate: "plate", screen: "screen", grid: "grid", cathode: "cathode" }),
    ),
    analysis: dc,
  },
  {
    name: "cathodyne-direct-coupled",
    network: network(
      supply(300),
      resistor("Rg", "grid", CHASSIS, 1e6),
      resistor("Rp", "B+", "plate", 330e3),
      resistor("Rk", "cathode", CHASSIS, 1500),
      triode("V1a", "6SL7", { plate: "plate", grid: "grid", cathode: "cathode" }),
      resistor("Rpp", "B+", "out-", 33e3),
      resistor("Rkk", "out+", CHASSIS, 33e3),
      triode("V1b", "6SN7", { plate: "out-", grid: "plate", cathode: "out+" }),
    ),
    analysis: dc,
  },
  { name: "long-tail-pair", network: network(longTail), analysis: dc },
  {
    name: "cathode-follower",
    network: network(
      supply(280),
      resistor("R1", "B+", "grid", 680e3),
      resistor("R2", "grid", CHASSIS, 330e3),
      resistor("Rk", "cathode", CHASSIS, 33e3),
      triode("V1", "12AU7", { plate: "B+", grid: "grid", cathode: "cathode" }),
    ),
    analysis: dc,
  },
  {
    name: "triode-driven-1khz",
    network: network(
      driven(0.3, 1000),
      voltageAmplifier(),
      capacitor("Ck", "cathode", CHASSIS, 25),
      capacitor("Cc", "plate", "out", 0.022),
      resistor("Rnext", "out", CHASSIS, 470e3),
    ),
    analysis: { kind: "steady", hertz: 1000, settlePeriods: 150, fromOperatingPoint: true },
  },
  {
    name: "beam-output-driven-400hz",
    network: network(driven(5, 400), beamOutput),
    analysis: { kind: "steady", hertz: 400, settlePeriods: 80, fromOperatingPoint: true },
  },
  {
    name: "triode-gain-bypassed",
    network: network(
      driven(0.1, 1000),
      voltageAmplifier(),
      capacitor("Ck", "cathode", CHASSIS, 25),
      capacitor("Cc", "plate", "out", 0.022),
      resistor("Rnext", "out", CHASSIS, 470e3),
    ),
    analysis: { kind: "small-signal", input: "signal", outputs: ["plate", "out", "cathode"], hertz: [5, 20, 100, 1000, 10000] },
  },
  {
    name: "triode-gain-unbypassed",
    network: network(driven(0.1, 1000), voltageAmplifier()),
    analysis: { kind: "small-signal", input: "signal", outputs: ["plate", "cathode"], hertz: [20, 1000] },
  },
  {
    name: "pentode-gain",
    network: network(driven(0.01, 1000), pentodeAmplifier),
    analysis: { kind: "small-signal", input: "signal", outputs: ["plate", "screen"], hertz: [10, 50, 400, 5000] },
  },
  {
    name: "beam-output-gain",
    network: network(driven(1, 400), beamOutput),
    analysis: { kind: "small-signal", input: "signal", outputs: ["plate", "speaker"], hertz: [30, 60, 400, 3000] },
  },
  {
    name: "long-tail-gain",
    network: network(driven(0.1, 1000, "grid1"), longTail, capacitor("Cg2", "grid2", CHASSIS, 0.1)),
    analysis: { kind: "small-signal", input: "signal", outputs: ["plate1", "plate2"], hertz: [20, 1000] },
  },
  {
    name: "ripple-through-filter-gain",
    network: network(
      acSource("hum", "rect", CHASSIS, 10, 120),
      { kind: "inductor", id: "L1", nodes: ["rect", "B+"], henries: 8, dcrOhms: 250 },
      capacitor("C1", "B+", CHASSIS, 16, { esrOhms: 3 }),
      resistor("R1", "B+", "B2", 10e3),
      capacitor("C2", "B2", CHASSIS, 10),
      resistor("Rload", "B+", CHASSIS, 5000),
      resistor("Rload2", "B2", CHASSIS, 100e3),
    ),
    analysis: { kind: "small-signal", input: "hum", outputs: ["B+", "B2"], hertz: [60, 120, 240] },
  },
];
