import type { ReadingQuantity } from "../model/index.ts";
import type { Fault } from "./fault.ts";

/** What one suspect says of one reading. SI; null stands for an open circuit. */
export interface SuspectReading {
  at: string;
  to: string;
  quantity: ReadingQuantity;
  condition: string;
  read: number | null;
  /** What the suspect predicts, and what the chassis without a fault would show. */
  predicted: number | null;
  healthy: number | null;
  /** Deviation of the reading from the suspect's prediction, in standard deviations. */
  deviation: number;
  /** True when this suspect takes the reading for a slip of the meter or the pen. */
  slip?: boolean;
}

/** One suspect; what cannot be told from it by any reading stands in its group. */
export interface Suspect {
  rank: number;
  /** Belief in the group. */
  posterior: number;
  /** Belief before the readings. */
  prior: number;
  title: string;
  fault: Fault;
  /** A second fault beside it, where one alone does not explain the readings. */
  second?: { title: string; fault: Fault };
  /** Values that the readings allow, where the fault has one. */
  low?: number;
  high?: number;
  readings: readonly SuspectReading[];
  group: readonly { title: string; fault: Fault; posterior: number }[];
  /** How to make sure: what to look at, lift or measure out of circuit. */
  confirm: string;
  cautions: readonly string[];
  /** Where the suspect puts a voltage that must not be there. */
  hazard?: { at: string; volts: number; healthy: number };
}

/** The measurement to make next. */
export interface SuspectNext {
  at: string;
  to: string;
  quantity: ReadingQuantity;
  condition: string;
  /** Expected information, in bits. */
  bits: number;
  /** What the leading suspects, and the chassis without a fault, say it will show. */
  predictions: readonly { title: string; value: number | null; spread: number }[];
  cautions: readonly string[];
  why: string;
}

/** What the search found. Plain data, SI. */
export interface SuspectReport {
  verdict: "nothing-off" | "suspects" | "none-of-these" | "no-readings";
  /** Belief that nothing is wrong but tolerances. */
  healthy: number;
  /** Belief that it is something that the search does not know. */
  noneOfThese: number;
  suspects: readonly Suspect[];
  /** Readings that even the leading suspect does not explain. */
  unexplained: readonly SuspectReading[];
  next?: SuspectNext;
  /** Why no powered measurement is proposed. */
  coldOnly?: { title: string; at: string; volts: number };
  life: "found" | "restored";
  hypotheses: number;
  /** Of these, leads and bridges at alternating points that were not looked at, since something else explains the readings. */
  spared: number;
  simulations: number;
  /** False when time ran out before every hypothesis had been looked at. */
  complete: boolean;
  seconds: number;
}
