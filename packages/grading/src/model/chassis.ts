import type { Network, ParameterRef, Sensitivities, SteadyState } from "@underchassis/calc";
import type { Dataset, StageTemplate } from "@underchassis/dataset";
import type { Location } from "./diagnostic.ts";
import type { ElementOrigin, Life, Part } from "./part.ts";

export interface LineSupply {
  designVolts: number;
  hertz: number;
  actualVolts: number;
  lowVolts: number;
  highVolts: number;
  hot: string;
  neutral: string;
  earth: string;
  /** Sources of the default spread. */
  source: string;
}

export interface Condition {
  id: string;
  /** The built-in condition that it starts from. */
  like: "cold" | "tubes-out" | "standby" | "operating";
  title: string;
  powered: boolean;
  /** Line voltage of the readings; undefined: the actual line voltage. */
  lineVolts?: number;
  /** Which tubes are in: by tube name (V4), sections merged. */
  tubes: "all" | "none" | "rectifiers" | readonly string[];
  switches: Readonly<Record<string, "open" | "closed">>;
  loads: Readonly<Record<string, { amps: number } | { ohms: number }>>;
}

export interface Meter {
  id: string;
  title: string;
  inputOhms?: number;
  ohmsPerVolt?: number;
  accuracy: number;
  testVolts: number;
  source: string;
}

export type ReadingQuantity = "dc-volts" | "ac-volts" | "ripple-volts" | "ohms" | "dc-amps" | "ac-amps";

export interface Reading {
  index: number;
  at: string;
  to: string;
  quantity: ReadingQuantity;
  condition: string;
  life: "found" | "restored";
  value: number;
  asWritten: string;
  meter: Meter;
  /** Meter input resistance during this reading. */
  loadOhms: number;
  lineVolts?: number;
  published?: { low: number; high: number; asWritten: string };
  note?: string;
  location: Location;
}

export interface Stage {
  id: string;
  title: string;
  template: StageTemplate;
  /** Terminal or inner point of the template -> point of the chassis. */
  points: Readonly<Record<string, string>>;
  /** Role -> part id. */
  parts: Readonly<Record<string, string>>;
  /** Setting of the template -> its value in this chassis, SI. */
  settings: Readonly<Record<string, number>>;
  /** Settings that the job gives; the others are the template's typical ones. */
  ownSettings: readonly string[];
  location: Location;
}

/** Which chassis, in which condition, on which line voltage. */
export interface Situation {
  life: Life;
  condition: string;
  /** `actual`: the outlet (or the condition's own line voltage); a number: volts RMS. */
  line: "design" | "actual" | "low" | "high" | number;
  /** Ohms between two points: a voltmeter. */
  meter?: { from: string; to: string; ohms: number };
  /** Id of a part that is taken as it was found: the chassis without that one change. */
  revert?: string;
  /** Fewer steps a period: means within 0.5 %, for differences between two such solutions. */
  coarse?: true;
}

/** A network with the part behind each element, ready to be simulated. */
export interface CompiledNetwork {
  network: Network;
  origins: ReadonlyMap<string, ElementOrigin>;
  /** Parameters that may be off, with their half-widths as shares: { minus, plus }. */
  uncertain: readonly { ref: ParameterRef; minus: number; plus: number; part: string }[];
  /** Ties and other things that the compiler added or left out, in words. */
  notes: readonly string[];
  /** Parts that do nothing because both their leads lie on one point. */
  shorted: readonly { part: string; point: string }[];
  /** The network's name of a point: points joined by wires share one. Undefined when nothing in this situation touches it. */
  pointOf(point: string): string | undefined;
}

/** Result of a simulation: solved, or why not. */
export type Solved =
  | { ok: true; compiled: CompiledNetwork; steady: SteadyState }
  | { ok: false; code: string; message: string; points: readonly string[]; parts: readonly string[] };

/** A computed value with its window. */
export interface Prediction {
  nominal: number;
  /** About 95 %: part tolerances, line voltage, tube spread and meter together. */
  low: number;
  high: number;
  sigma: number;
  worstLow: number;
  worstHigh: number;
  /** Largest contributors, share of variance, largest first. */
  contributors: readonly { part: string; parameter: string; share: number }[];
}

/** Everything that checks can look at. Simulations run on demand and are kept. */
export interface ChassisModel {
  title: string;
  description: string;
  era?: number;
  assembly: "factory" | "kit" | "home" | "unknown";
  isolation: "transformer" | "transformerless";
  reference: string;
  line: LineSupply;
  dataset: Dataset;
  stages: readonly Stage[];
  parts: ReadonlyMap<string, Part>;
  /** Every point, with the ids of the parts that touch it as designed. */
  points: ReadonlyMap<string, readonly string[]>;
  /** Points joined because a series part between them is not in this chassis. */
  joins: readonly (readonly [string, string])[];
  conditions: ReadonlyMap<string, Condition>;
  readings: readonly Reading[];
  file: string;
  /** Dataset version that the job says it was written for. */
  writtenFor?: string;
  /** True when any part has a planned change. */
  hasPlans: boolean;

  compile(situation: Situation): CompiledNetwork;
  solve(situation: Situation): Solved;
  /** Value and window of a voltage or current, meter included. Undefined when the network cannot be solved. */
  predict(
    situation: Situation,
    probe: { quantity: ReadingQuantity; at: string; to: string },
    meter?: { ohms: number; accuracy: number },
  ): Prediction | undefined;
  sensitivities(situation: Situation): Sensitivities | undefined;
  /** Ids of the elements that stand for a part in a compiled network. */
  elementsOf(compiled: CompiledNetwork, part: string): readonly string[];
}
