import type { Dielectric, Marking, MarkingContext, Tolerance } from "../../quantities/types.ts";
import type { Colour } from "../colours.ts";
import type { MarkingFamily } from "./markingFamily.ts";

/** What is known of a part besides its marking. */
export interface DecodeContext extends MarkingContext {
  /** Not given: both are tried. */
  kind?: "resistor" | "capacitor";
  /** The code the marking is written in. Not given: every code of its time is tried. */
  family?: MarkingFamily;
}

/** One way to read a marking. */
export interface DecodedReading {
  kind: "resistor" | "capacitor";
  /** Ohms or farads. */
  value: number;
  dimension: "resistance" | "capacitance";
  tolerance: Tolerance;
  /** False when no mark said so and the era's default stands in. */
  toleranceWritten: boolean;
  family: MarkingFamily;
  /** The code in words: "film, 5 bands", "RMA 3-dot mica". */
  code: string;
  /** Why it can be read so. */
  because: string;
  /** Place in the order written, of a capacitor with several sections; from 1. */
  section?: number;
  ratedVolts?: number;
  ratedVoltsKind?: "dc" | "ac";
  ratedWatts?: number;
  safetyClass?: NonNullable<Marking["safetyClass"]>;
  dielectric?: Dielectric;
  composition?: NonNullable<Marking["composition"]>;
  /** ppm/K, lowest and highest. */
  temperatureCoefficientPpm?: readonly [number, number];
  characteristic?: string;
  /** Percent per 1000 hours. */
  failureRatePercent?: number;
  written: WrittenBack;
  /** Source id of the code. */
  source: string;
  notes: readonly string[];
}

/** A value in today's spellings. */
export interface WrittenBack {
  /** "47 kohm", "4.7 nF". */
  plain: string;
  /** Letter code of IEC 60062: "47K", "4n7". */
  letters: string;
  /** Three-figure code of a capacitor with its tolerance letter: "473K". Absent where the code cannot carry the value. */
  figures?: string;
  /** Bands of a resistor. Absent where bands cannot carry the value or the tolerance. */
  bands?: readonly Colour[];
}

/** A decoded marking. */
export interface Decoded {
  asWritten: string;
  /** Most likely first; the sections of a can are neighbours, in the order written. */
  readings: readonly DecodedReading[];
  /** True when the readings differ in value, sections aside. */
  ambiguous: boolean;
}
