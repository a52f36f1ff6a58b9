/** What can be wrong with one part, one lead, or the line. Trade terms; datasets/failure-notes use the same words. */
export const FAULT_KINDS = [
  "open",
  "short",
  "drift-high",
  "drift-low",
  "wrong-value",
  "leaky",
  "lost-capacity",
  "high-esr",
  "reversed",
  "exchanged",
  "moved-lead",
  "bridge",
  "dead",
  "weak",
  "gassy",
  "electrode-short",
  "shorted-turns",
  "line-voltage",
] as const;
export type FaultKind = (typeof FAULT_KINDS)[number];

/** One fault of one chassis, as an edit of its network. Plain data. */
export interface Fault {
  kind: FaultKind;
  /** Part id; `line` for the outlet; the first point of a bridge. */
  part: string;
  /** Element of the compiled network that the fault is in; `element.winding` for a winding. */
  element: string;
  /** Moved lead: which lead, as the part's pin or as `start`, `finish` of a winding. Electrode short: the two electrodes. */
  lead?: string;
  /** Moved lead: where it belongs. */
  from?: string;
  /** Moved lead, bridge: the point that it lies on. */
  to?: string;
  /** Exchanged: the other element. */
  with?: string;
  /** Elements that fail with this one: the other sections of a rectifier tube. */
  also?: readonly string[];
  /** Value that the part has, in the unit of `parameter`; a tube's emission as a share of new. */
  value?: number;
  /** Value that it should have. */
  nominal?: number;
  parameter?: "ohms" | "farads" | "leakOhms" | "esrOhms" | "emission" | "turns" | "rmsVolts" | "gridOhms";
}
