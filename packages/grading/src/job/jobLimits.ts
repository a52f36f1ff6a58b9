import type { ReadLimits } from "@underchassis/source-text";

/**
 * What is read of a job. A chassis of 2000 parts and as many readings (the most that the format allows) takes a fifth of the bytes and of the
 * tokens; the format itself nests nine levels; 2000 rows of 25 columns have a quarter of the marks.
 */
export const JOB_LIMITS: ReadLimits = {
  noun: "job",
  bytes: 5_000_000,
  depth: 40,
  tokens: 400_000,
  members: 4000,
  marks: 200_000,
  rows: 2000,
};
