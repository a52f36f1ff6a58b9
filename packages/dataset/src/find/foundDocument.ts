/** What can be looked up, by kind, in the order in which kinds are listed to people. */
export const FIND_KINDS = ["stage", "failure-note", "tube", "caution", "rule-of-thumb", "check", "table"] as const;
export type FindKind = (typeof FIND_KINDS)[number];

/** One thing that can be found, with all that it says. */
export interface FindDocument {
  kind: FindKind;
  id: string;
  title: string;
  /** Other names that count as its id: a tube's types. */
  names?: readonly string[];
  /** What it says, piece by piece: the piece that answers a question is quoted. */
  texts: readonly string[];
  /** What to write in a job to use it, or what it is there for. */
  use: string;
}
