import { describe, expect, it } from "vitest";
import { fuseFor } from "./transformerLoad.ts";

describe("fuseFor", () => {
  // Rows of IEC 60127: 0.8, 1, 1.25 A.
  it.each([
    [0.9, undefined, 1],
    [0.9, 1.5, 1],
    [1.1, 1.2, 1],
    [0.3, 0.05, 0.05],
  ])("for %d A, at most %s: %d A", (wanted, most, rating) => {
    expect(fuseFor(wanted, most)).toBe(rating);
  });
});
