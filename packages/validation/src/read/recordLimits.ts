import type { ReadLimits } from "@underchassis/source-text";

/**
 * What is read of a record or table of the reference. The largest of today (a file of worked examples) has a fiftieth of the bytes and
 * a tenth of the tokens; the deepest schema nests eight levels.
 */
export const RECORD_LIMITS: ReadLimits = {
  noun: "record",
  bytes: 2_000_000,
  depth: 40,
  tokens: 200_000,
  members: 4000,
  marks: 200_000,
  rows: 5000,
};

/** The same for tables. */
export const TABLE_LIMITS: ReadLimits = { ...RECORD_LIMITS, noun: "table" };
