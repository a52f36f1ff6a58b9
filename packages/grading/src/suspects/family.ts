import type { Fault, FaultKind } from "./fault.ts";

/** A share of a family's values that has a name of its own: one value, or a range. */
export interface Member {
  kind: FaultKind;
  /** One value, or the two ends of a range that is uniform in the logarithm. */
  at: number | readonly [number, number];
  prior: number;
}

/**
 * Faults of one part that differ in one value only: a resistor from shorted through every wrong value to open. They are simulated at
 * the nodes; what lies between is interpolated.
 */
export interface Family {
  /** The fault without its value; its kind gives way to the member's. */
  base: Omit<Fault, "kind" | "value">;
  /** How a value goes in: `value` sets the parameter, the others are edits of their own. */
  by: "value" | "gassy" | "shorted-turns" | "bridge" | "electrode-short";
  /** Values to simulate, rising; 0 and Infinity stand for a short and an open part. */
  nodes: readonly number[];
  members: readonly Member[];
}

/** A fault without a value to estimate. */
export interface Single {
  fault: Fault;
  prior: number;
}

/** The fault of a family at one value. */
export function faultAt(family: Family, kind: FaultKind, value: number): Fault {
  return { ...family.base, kind, value };
}

/** The edit that puts the family's value into the network. */
export function editAt(family: Family, value: number): Fault {
  return { ...family.base, kind: family.by === "value" ? "wrong-value" : family.by, value };
}
