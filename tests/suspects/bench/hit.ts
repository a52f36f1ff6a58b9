/** When a suspect is the seeded fault. */
import type { SeededFault } from "../faults/seededFault.ts";

/** A suspect's fault as far as it is judged. */
export interface NamedFault {
  kind: string;
  part: string;
  lead?: string;
  to?: string;
  with?: string;
  value?: number;
  nominal?: number;
  factor?: number;
}

/** Values closer than this are the same fault, whatever it is called. */
const SAME_VALUE = 1.25;
const VALUE_KINDS: ReadonlySet<string> = new Set(["open", "drift-high", "drift-low", "wrong-value"]);

const samePair = (a: readonly (string | undefined)[], b: readonly (string | undefined)[]): boolean =>
  (a[0] === b[0] && a[1] === b[1]) || (a[0] === b[1] && a[1] === b[0]);

function factorOf(fault: NamedFault): number | undefined {
  if (fault.kind === "open") return Number.POSITIVE_INFINITY;
  if (fault.factor !== undefined) return fault.factor;
  return fault.value === undefined || fault.nominal === undefined || fault.nominal === 0 ? undefined : fault.value / fault.nominal;
}

/** Same part and same kind; a drift, a wrong value and an open of one part count as the same where the values agree within a quarter. */
export function isHit(seeded: SeededFault, named: NamedFault): boolean {
  if (seeded.kind === "bridge") return named.kind === "bridge" && samePair([seeded.part, seeded.to], [named.part, named.to]);
  if (seeded.kind === "exchanged") return named.kind === "exchanged" && samePair([seeded.part, seeded.with], [named.part, named.with]);
  if (seeded.part !== named.part) return false;
  if (seeded.kind === named.kind) return true;
  if (!VALUE_KINDS.has(seeded.kind) || !VALUE_KINDS.has(named.kind)) return false;
  const [a, b] = [factorOf(seeded), factorOf(named)];
  if (a === undefined || b === undefined) return false;
  return a === b || (Number.isFinite(a) && Number.isFinite(b) && Math.max(a / b, b / a) <= SAME_VALUE);
}
