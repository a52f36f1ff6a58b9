/** One fault of the benchmark, as data. Kinds in trade terms, the same words as a search for the culprit uses. */
export const SEEDED_KINDS = [
  "open",
  "short",
  "drift-high",
  "drift-low",
  "leaky",
  "lost-capacity",
  "high-esr",
  "reversed",
  "wrong-value",
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
export type SeededKind = (typeof SEEDED_KINDS)[number];

export interface SeededFault {
  kind: SeededKind;
  /** Part id; `line` for the outlet; the first point of a bridge. */
  part: string;
  /** Moved lead: the pin (`a`, `b`, `grid`). Open, weak: the section of a rectifier or the half of a winding. Electrode short: the two electrodes. */
  lead?: string;
  /** Moved lead, bridge: the point that it lies on. */
  to?: string;
  /** Exchanged: the other part. */
  with?: string;
  /** Value that the part has, as a share of the right one; shorted turns: the share of the winding that is shorted. */
  factor?: number;
  /** Leak, series resistance, bridge, gas current's resistance. */
  ohms?: number;
}

/** The fault as one line. */
export function describeFault({ kind, part, lead, to, with: other, factor, ohms }: SeededFault): string {
  const words = [kind, part, lead, to === undefined ? undefined : `to ${to}`, other === undefined ? undefined : `with ${other}`];
  if (factor !== undefined) words.push(`x${factor.toPrecision(3)}`);
  if (ohms !== undefined) words.push(`${ohms.toPrecision(3)} ohm`);
  return words.filter((word) => word !== undefined).join(" ");
}
