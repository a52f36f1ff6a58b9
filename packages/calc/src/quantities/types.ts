/** What a physical quantity is to this project: a number in SI base units, with what was written beside it. */

export type Dimension =
  | "resistance"
  | "capacitance"
  | "inductance"
  | "voltage"
  | "current"
  | "power"
  | "energy"
  | "frequency"
  | "time"
  | "temperature"
  | "conductance"
  | "charge"
  | "length"
  | "ratio";

/** A share of the value below and above it: { minus: 0.1, plus: 0.5 } is -10 +50 %. */
export interface Tolerance {
  minus: number;
  plus: number;
}

export interface Quantity {
  /** In SI base units: ohms, farads, henries, volts, amperes, watts, joules, hertz, seconds, kelvins, siemens. */
  value: number;
  dimension: Dimension;
  asWritten: string;
  /** What a careful reader would add ("no unit written, read as microfarad"); absent when there is nothing to add. */
  notes?: readonly string[];
}

/** From `low` to `high` in SI base units; an open end is -Infinity or Infinity. */
export interface Span {
  low: number;
  high: number;
  dimension: Dimension;
  asWritten: string;
}

/** Why a text could not be read: offset into the text, what stood there, what was expected, what would work. */
export interface ReadingProblem {
  message: string;
  offset: number;
  length: number;
  expected: string;
  nearest?: string;
}

export type Result<T> = { ok: true; value: T } | { ok: false; problem: ReadingProblem };

export type Dielectric = "paper" | "mica" | "ceramic" | "film" | "electrolytic" | "oil" | "air" | "tantalum";

/** What is known of a part besides its marking. */
export interface MarkingContext {
  /** Year of manufacture, roughly. Not given: taken as before 1960, and said so in a note where it matters. */
  era?: number;
  dielectric?: Dielectric;
  electrolytic?: boolean;
  /** Resistors: decides between the film and the military reading of five bands. */
  composition?: "carbon-composition" | "carbon-film" | "metal-film" | "metal-oxide" | "wirewound";
}

export type MarkedKind =
  | "resistor"
  | "capacitor"
  | "inductor"
  | "fuse"
  | "transformer-winding"
  | "rectifier"
  | "thermistor"
  | "lamp"
  | "load";

/**
 * What a marking says of a part. Which fields are set depends on the kind; `value` is ohms, farads, henries or (fuse, load)
 * amperes, or the winding's RMS volts.
 */
export interface Marking {
  kind: MarkedKind;
  asWritten: string;
  value?: number;
  dimension?: Dimension;
  tolerance?: Tolerance;
  /** True when the tolerance was written, false when it is the era's default. */
  toleranceWritten?: boolean;
  ratedVolts?: number;
  ratedVoltsKind?: "dc" | "ac";
  surgeVolts?: number;
  ratedWatts?: number;
  ratedAmps?: number;
  /** Choke or winding resistance, thermistor's cold resistance, load's resistance. */
  ohms?: number;
  joules?: number;
  safetyClass?: "X1" | "X2" | "X3" | "Y1" | "Y2" | "Y3" | "Y4";
  dielectric?: Dielectric;
  /** True when the dielectric was written on the part, false when it was told by the context or inferred from era and value. */
  dielectricWritten?: boolean;
  composition?: "carbon-composition" | "carbon-film" | "metal-film" | "metal-oxide" | "wirewound";
  speed?: "FF" | "F" | "M" | "T" | "TT";
  /** Centre-tapped winding written a-0-a: `value` is one side. */
  centerTapped?: boolean;
  /** Device type as written, upper case: "5Y3GT", "1N4007", "SELENIUM". */
  type?: string;
  /** Other ways to read it, most likely first, each with the reason. */
  alternatives: readonly { reading: string; value: number; because: string }[];
  /** What a careful reader would add ("mfd read as microfarad"). */
  notes: readonly string[];
}
