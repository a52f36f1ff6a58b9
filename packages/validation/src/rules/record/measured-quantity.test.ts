import { expect, it } from "vitest";
import type { RecordFile } from "../../model/subjects.ts";
import { measuredQuantity } from "./measured-quantity.ts";

const note = (quantity?: string): RecordFile => ({
  path: "datasets/failure-notes/x.json",
  kind: "failure-note",
  text: "",
  violations: [],
  value: { measurement: { text: "x", ...(quantity === undefined ? {} : { quantity }) } },
});

it("knows no quantity that a job has no place for", () => {
  const [complaint, ...others] = measuredQuantity.check(note("glow"));
  expect(others).toEqual([]);
  expect(complaint).toMatchObject({ at: { path: ["measurement", "quantity"] }, received: "glow" });
  expect(complaint?.expected).toContain("dc-volts");
});

// The job format: readings have these quantities, parts' `measured` has value, leakage, esr, dcr and emission.
it.each(["dc-volts", "ripple-volts", "resistance", "insulation", "capacitance", "leakage", "esr", "emission", undefined])(
  "a job can carry %s",
  (quantity) => expect(measuredQuantity.check(note(quantity))).toEqual([]),
);
