import type { Location } from "./diagnostic.ts";
import type { Life } from "./part.ts";

/** Worst first. `danger`: do not energise. */
export const SEVERITIES = ["danger", "replace", "adjust", "watch", "unmeasured", "good"] as const;
export type Severity = (typeof SEVERITIES)[number];

/** The steps of bringing a chassis up, lowest first. */
export const CLEARANCES = ["none", "current-limited", "full-line", "service"] as const;
export type ClearanceLevel = (typeof CLEARANCES)[number];

/** A number behind a conclusion. */
export interface Figure {
  label: string;
  /** SI base unit; null when unknown. */
  value: number | null;
  /** Base unit's symbol: V, A, ohm, F, H, W, J, Hz, s, K, %, or "" for a bare ratio. */
  unit: string;
  low?: number;
  high?: number;
  /** The limit that it is held against, on which side, and what is left: (limit - value) / limit, or its mirror for a minimum. */
  limit?: number;
  limitKind?: "maximum" | "minimum";
  margin?: number;
  /** How it was computed, in a short line a reader can follow. */
  how: string;
  /** Where the limit or the published value comes from; `computed` when it follows from the chassis alone. */
  source: string;
}

export interface OrderItem {
  /** What to ask a shop for: "capacitor 47 uF 500 V 105 C". */
  what: string;
  quantity: number;
  for: string;
  why: string;
}

/** What one check concludes about one part, point or reading. */
export interface Finding {
  check: string;
  severity: Severity;
  /** Which chassis it was judged on. */
  life: Life;
  stage?: string;
  /** Part id as in the chassis model. */
  part?: string;
  point?: string;
  condition?: string;
  /** One line: what is the matter. */
  title: string;
  found: string;
  shouldBe: string;
  figures: readonly Figure[];
  why: string;
  action: string;
  /** Ids of cautions for doing the action. */
  cautions: readonly string[];
  /** Source ids. */
  sources: readonly string[];
  order?: readonly OrderItem[];
  /** The lowest step of bringing-up that this finding forbids; absent when it forbids none. */
  holds?: Exclude<ClearanceLevel, "none">;
  location?: Location;
}
