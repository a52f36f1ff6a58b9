import type { FailureNote } from "@underchassis/dataset";
import { oneOf, recordOf } from "@underchassis/source-text";
import jobSchema from "../../../../../schemas/job.schema.json" with { type: "json" };
import type { Complaint, RecordRule } from "../../model/rule.ts";

/** What readings may measure, as the job format lists it. */
const READ: readonly string[] = readingQuantities();
/** What is a reading in ohms between two points, by its purpose. */
const OHMS = ["resistance", "continuity", "insulation"];
/** What the meter says of a part alone, by the property of a job's `measured` that carries it, where it has one of its own. */
const ON_PARTS: Readonly<Record<string, string>> = {
  capacitance: "value",
  inductance: "value",
  leakage: "leakage",
  esr: "esr",
  dcr: "dcr",
  emission: "emission",
};

/** What a failure note measures, a job can carry. */
export const measuredQuantity: RecordRule = {
  code: "UC-420",
  name: "measured-quantity",
  scope: "record",
  severity: "error",
  title: "A failure note's measurement is one that a job can carry",
  why: "Only what a job can hold can point at the fault.",
  bad: '"measurement": { "text": "Look at the glow.", "quantity": "glow" }',
  good: '"measurement": { "text": "Across the grid resistor.", "quantity": "dc-volts" }',
  kinds: ["failure-note"],
  check(record) {
    const { measurement } = record.value as FailureNote;
    const { quantity } = measurement;
    if (quantity === undefined || READ.includes(quantity) || carried(quantity)) return [];
    return [
      {
        at: { path: ["measurement", "quantity"] },
        message: `no job can carry "${quantity}"`,
        received: quantity,
        expected: oneOf([...READ, ...[...OHMS, ...Object.keys(ON_PARTS)].filter(carried)]),
      },
    ] satisfies Complaint[];
  },
};

function carried(quantity: string): boolean {
  if (OHMS.includes(quantity)) return READ.includes("ohms");
  const property = Object.hasOwn(ON_PARTS, quantity) ? ON_PARTS[quantity] : undefined;
  return property !== undefined && property in recordOf(recordOf(recordOf(jobSchema.$defs).measured).properties);
}

function readingQuantities(): string[] {
  const { quantity } = recordOf(recordOf(recordOf(jobSchema.$defs).reading).properties);
  const { enum: choices } = recordOf(quantity);
  return Array.isArray(choices) ? choices.map(String) : [];
}
