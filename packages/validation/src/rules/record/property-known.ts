import type { RecordRule } from "../../model/rule.ts";
import { shapeComplaints } from "../../shared/shapeComplaints.ts";

/** Every property is one of the schema's. */
export const propertyKnown: RecordRule = {
  code: "UC-301",
  name: "property-known",
  scope: "record",
  phase: "shape",
  severity: "error",
  title: "Every property is one that the schema has",
  why: "A misspelt property is read by nobody, and what it says is lost.",
  bad: '"polarized": true',
  good: '"polarised": true',
  check: (record) => shapeComplaints(record, (code) => code === "property-unknown"),
};
