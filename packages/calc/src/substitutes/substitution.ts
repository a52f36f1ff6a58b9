import type { MarkedKind, Marking, MarkingContext } from "../quantities/types.ts";

/** What a rectifier tube allows behind it; from its record or its sheet. */
export interface RectifierLimit {
  type: string;
  maxInputFarads: number;
  source: string;
}

/** What is known of the place a part sits in. Everything may be left out; what a rule misses it says. */
export interface SubstituteContext {
  /** Year of manufacture, roughly. */
  era?: number;
  rectifier?: RectifierLimit;
  /** Grid resistor behind a coupling capacitor. */
  gridLeakOhms?: number;
  /** Cathode resistor that a bypass lies across. */
  cathodeOhms?: number;
  /** The worst case across the part: DC with cold tubes plus ripple peak, or the drop of a resistor. */
  workingVolts?: number;
  /** Nominal line voltage, RMS; 120 when not given. */
  lineVolts?: number;
  /** Line frequency; 60 when not given. */
  lineHertz?: number;
  /** The chassis is connected to protective earth by a three-wire cord. */
  earthed?: boolean;
}

/** A statement of a rule with its source id. */
export interface Rule {
  text: string;
  source: string;
}

/** Lowest and highest value that may be fitted, in ohms or farads. */
export interface Limits {
  lowest: number;
  highest: number;
  rule: Rule;
}

/** A value that may be fitted. */
export interface Candidate {
  /** Ohms or farads. */
  value: number;
  /** Share of the old value: -0.06 is 6 % less. */
  deviation: number;
  /** Preferred series it is of: "E12"; or "two in parallel" and the like. */
  series: string;
  /** Corner frequency with it, where the place has one. */
  cornerHertz?: number;
}

/** Least rating of the new part. */
export interface Rating {
  quantity: "dc volts" | "ac volts" | "watts" | "body volts";
  least: number;
  /** The first rating made that is enough; absent when none is made. */
  standard?: number;
  /** Not above this either: a part that acts as a fuse. */
  most?: number;
  rule: Rule;
}

/** What may replace a part. */
export interface Substitution {
  role: string;
  part: Marking;
  limits: Limits;
  /** Best first. Empty when nothing that is made lies within the limits. */
  candidates: readonly Candidate[];
  /** Corner frequency with the old part, where the place has one. */
  cornerHertz?: number;
  ratings: readonly Rating[];
  /** What it should be made of. */
  make: readonly string[];
  rules: readonly Rule[];
  cautions: readonly string[];
  /** What would make the answer better. */
  missing: readonly string[];
}

/** A place that parts are substituted in. One file a role. */
export interface Role {
  /** "reservoir", "coupling". */
  id: string;
  title: string;
  kind: Extract<MarkedKind, "resistor" | "capacitor">;
  /** How a marking without unit is read in this place. */
  hint?: MarkingContext;
  substitute(
    part: SubstitutePart,
    context: SubstituteContext,
  ): Omit<Substitution, "role" | "part" | "cautions"> & { cautions?: readonly string[] };
}

/** A marking that gives a value, as every role needs it. */
export type SubstitutePart = Marking & { value: number };
