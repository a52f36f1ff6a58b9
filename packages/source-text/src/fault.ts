import type { Problem } from "./problems.ts";

/** What is wrong with a text, and the stretch of it. */
export interface Fault extends Problem {
  offset: number;
  length: number;
}
