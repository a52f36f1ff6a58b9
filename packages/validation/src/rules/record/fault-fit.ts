import { type FailureNote, PART_FAULTS } from "@underchassis/dataset";
import { nearestOf, oneOf } from "@underchassis/source-text";
import type { Complaint, RecordRule } from "../../model/rule.ts";

/** Every part may touch its neighbour. */
const ALWAYS = ["bridge"];

/** A part has the faults of its kind. */
export const faultFit: RecordRule = {
  code: "UC-429",
  name: "fault-fit",
  scope: "record",
  severity: "error",
  title: "The fault of a failure note is one that its kind of part can have",
  why: "The search for suspects tries a fault on parts that can have it; another is tried on none, and the note is never found.",
  bad: '"partKind": "resistor", "fault": { "kind": "shorted-turns", "weight": 10 }',
  good: '"partKind": "transformer", "fault": { "kind": "shorted-turns", "weight": 10 }',
  kinds: ["failure-note"],
  check(record) {
    const { fault, partKind } = record.value as FailureNote;
    if (fault === undefined) return [];
    const named: readonly string[] = fault.partKinds ?? [partKind];
    const path = (index: number) => (fault.partKinds === undefined ? ["fault", "kind"] : ["fault", "partKinds", index]);
    return named.flatMap((kind, index): Complaint[] => {
      // Wiring errors are no part's: what they do is done to any.
      const faults = PART_FAULTS[kind];
      if (faults === undefined || faults.includes(fault.kind) || ALWAYS.includes(fault.kind)) return [];
      return [
        {
          at: { path: path(index) },
          message: `a ${kind} cannot have the fault "${fault.kind}"`,
          received: fault.partKinds === undefined ? fault.kind : kind,
          expected: oneOf([...faults, ...ALWAYS]),
          nearest: nearestOf(fault.kind, faults),
        },
      ];
    });
  },
};
