import type { Marking, PentodeParameters, Tolerance, TriodeParameters } from "@underchassis/calc";
import type { JobKind } from "@underchassis/dataset";
import type { Location } from "./diagnostic.ts";

/**
 * The chassis over time. `designed`: as the maker meant it. `found`: what was really there, measured values included.
 * `restored`: found plus everything that has been fitted, as it stands on the bench now. `planned`: restored plus what is only planned.
 */
export const LIVES = ["designed", "found", "restored", "planned"] as const;
export type Life = (typeof LIVES)[number];

/** What a part is, as the job format names it. */
export type PartKind = JobKind;

/** A figure of a part: its value, how far it may be off, and whether a meter said so. */
export interface Valued {
  value: number;
  tolerance: Tolerance;
  /** Where it comes from: marked on the part, measured out of circuit, typical of the template, fitted. */
  from: "marking" | "measurement" | "typical" | "fitted" | "default";
}

export interface WindingSpec {
  id: string;
  /** Two points, or start, centre tap, finish. */
  points: readonly string[];
  /** RMS volts at rated current, whole winding when not centre-tapped, one side when centre-tapped. */
  ratedVolts: number;
  ratedAmps?: number;
  openVolts?: number;
  ohms: number;
  ohmsFrom: Valued["from"];
  centerTapped: boolean;
}

/** Limits of a rectifier or tube, SI; every one may be unknown. */
export interface DeviceLimits {
  system?: string;
  plateVolts?: number;
  screenVolts?: number;
  plateWatts?: number;
  screenWatts?: number;
  cathodeAmps?: number;
  peakInverseVolts?: number;
  dcAmps?: number;
  peakAmps?: number;
  hotSwitchAmps?: number;
  surgeAmps?: number;
  maxInputFarads?: number;
  minSupplyOhms?: number;
  rmsVoltsCapacitorInput?: number;
  rmsVoltsChokeInput?: number;
  minRegulatorAmps?: number;
  maxRegulatorAmps?: number;
  gridOhmsFixedBias?: number;
  gridOhmsCathodeBias?: number;
  heaterCathodeVolts?: number;
  source: string;
}

/** What a part is in one life. Fields that do not apply to the kind are absent. */
export interface PartState {
  present: boolean;
  /** Not present because it is burnt open, not because there is none: it leaves a gap. */
  open?: true;
  /** Lead or pin -> point of the chassis. Two-lead parts use `a` and `b`. */
  pins: Readonly<Record<string, string>>;
  marking?: Marking;
  type?: string;
  /** Ohms, farads, henries, amperes (fuse, load) or volts (battery). */
  main?: Valued;
  ratedVolts?: number;
  ratedVoltsKind?: "dc" | "ac";
  ratedWatts?: number;
  ratedAmps?: number;
  joules?: number;
  ratingsFrom?: Valued["from"];
  safetyClass?: Marking["safetyClass"];
  dielectric?: Marking["dielectric"];
  speed?: Marking["speed"];
  dcr?: Valued;
  esr?: Valued;
  /** Leakage resistance at the working voltage. */
  leak?: Valued;
  windings?: readonly WindingSpec[];
  limits?: DeviceLimits;
  /** For tubes: which unit model simulates it. */
  device?:
    | { kind: "triode"; parameters: TriodeParameters; spread: number; source: string }
    | { kind: "pentode"; parameters: PentodeParameters; spread: number; source: string }
    | { kind: "vacuum-diode"; perveance: number; spread: number; source: string }
    | { kind: "gas-diode"; dropVolts: number; ohms: number; source: string }
    | { kind: "gas-regulator"; strikeVolts: number; operatingVolts: number; slopeOhms: number; extinguishAmps: number; source: string }
    | { kind: "silicon"; saturationAmps: number; emission: number; ohms: number; source: string }
    | { kind: "selenium"; plates: number; kneeVoltsPerPlate: number; ohmsPerPlate: number; source: string };
  heater?: {
    volts: number;
    amps: number;
    direct: boolean /** With the halves of a tapped heater in parallel. */;
    parallel?: { volts: number; amps: number };
  };
  /** Tubes: share of a new tube's emission, as a tester showed it. */
  emission?: number;
  /** Loads: constant current, or resistance. */
  load?: { amps: number } | { ohms: number };
  earthed?: boolean;
}

export interface Measured {
  value?: number;
  circuit: "in" | "out";
  leakOhms?: number;
  leakAmps?: number;
  atVolts?: number;
  esrOhms?: number;
  dcrOhms?: number;
  emission?: number;
  condition?: string;
  /** Relative error of the meter. */
  accuracy: number;
  asWritten: string;
  location: Location;
}

/** One part of the chassis through its lives. */
export interface Part {
  /** Unique: the name when it has one, else `stage.role`. */
  id: string;
  name: string;
  title: string;
  kind: PartKind;
  role?: string;
  duty?: string;
  stage?: string;
  /** Template id of the stage that calls for it; absent for parts beyond the templates. */
  template?: string;
  /** What the template says, when there is one. */
  advice?: {
    measure: readonly string[];
    ages?: string;
    replace?: { rule: string; always: boolean; driftLimit?: number; source: string };
    substitute?: { lowest?: number; highest?: number; text?: string; source: string };
  };
  polarised: boolean;
  /** Tubes whose mean currents stand as loads: drive or oscillation sets them, not the curves. */
  driven?: true;
  /** A part in series: where there is none, its two points are joined. */
  joinedWhenAbsent: boolean;
  /** Switches: position by condition. */
  positions?: Readonly<Record<string, "open" | "closed">>;
  /** Loads: the conditions in which they draw; absent: wherever all tubes are in. */
  presentIn?: readonly string[];
  lives: Readonly<Record<Life, PartState>>;
  measured?: Measured;
  /** Measurement of the fitted part. */
  fittedMeasured?: Measured;
  /** What was found in its place, when that was not what belongs there. */
  foundInPlace?: string;
  change: "none" | "replaced" | "added" | "removed" | "moved" | "planned";
  changeWhy?: string;
  asWritten: { marked?: string; measured?: string; fitted?: string };
  location: Location;
}

/** Which element of the network stands for (a share of) which part. */
export interface ElementOrigin {
  part: string;
  /** `main`, or a winding, a section of a rectifier (plate-1), a heater. */
  aspect: string;
}
