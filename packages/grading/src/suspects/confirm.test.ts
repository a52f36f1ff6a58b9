import { describe, expect, it } from "vitest";
import { referenceDataset } from "../testing/referenceDataset.ts";
import { confirmOf, measurementCautions } from "./confirm.ts";
import { FAULT_KINDS } from "./fault.ts";

describe("confirmOf", () => {
  it.each(FAULT_KINDS)("%s: says what to do, as a sentence", (kind) => {
    expect(confirmOf({ kind, part: "R1", element: "R1" })).toMatch(/^[A-Z].{15,}\.$/);
  });

  it("lifts a lead only with the power off", () => {
    for (const kind of ["open", "short", "drift-high", "drift-low"] as const)
      expect(confirmOf({ kind, part: "R1", element: "R1" })).toMatch(/^Power off, filters discharged/);
  });
});

describe("measurementCautions", () => {
  it("are the dataset's, and more of them with power on", () => {
    const { cautions } = referenceDataset();
    const [cold, live] = [measurementCautions(false), measurementCautions(true)];
    for (const id of [...cold, ...live]) expect(cautions.has(id), id).toBe(true);
    for (const id of cold) expect(live).toContain(id);
    expect(live.length).toBeGreaterThan(cold.length);
  });
});
