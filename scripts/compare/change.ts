import type { Bump } from "./bump.ts";

/** One thing that is not as it was. */
export interface Change {
  what: "added" | "removed" | "changed";
  kind: string;
  id: string;
  /** Where it stands now; where it stood when it is gone. */
  file: string;
  /** Which property; absent for a whole record. */
  path?: string;
  before?: unknown;
  after?: unknown;
  /** What it asks of the version, and by which rule. */
  bump: Bump;
  why: string;
}

/** A rule's answer. */
export interface Verdict {
  bump: Bump;
  why: string;
}
