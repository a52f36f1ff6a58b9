import type { RecordRule } from "../../model/rule.ts";
import { shapeComplaints } from "../../shared/shapeComplaints.ts";

/** Every property that must be there is there. */
export const propertyPresent: RecordRule = {
  code: "UC-302",
  name: "property-present",
  scope: "record",
  phase: "shape",
  severity: "error",
  title: "Every property that the schema requires is there",
  why: "Checks and reports count on it.",
  bad: '{ "title": "B+", "quantity": "dc-volts" }',
  good: '{ "title": "B+", "quantity": "dc-volts", "condition": "operating", "source": "common-practice" }',
  check: (record) => shapeComplaints(record, (code) => code === "property-missing"),
};
