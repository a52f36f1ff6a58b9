import type { RecordRule } from "../../model/rule.ts";
import { shapeComplaints } from "../../shared/shapeComplaints.ts";

/** Codes that have a rule of their own. */
const ELSEWHERE = new Set(["property-unknown", "property-missing", "type-wrong", "choice-unknown"]);

/** Every value has the length, form and size that the schema asks for. */
export const valueShape: RecordRule = {
  code: "UC-305",
  name: "value-shape",
  scope: "record",
  phase: "shape",
  severity: "error",
  title: "Every value has the length, form and size that the schema asks for",
  why: "Ids go into file names and addresses, texts into lines of a report.",
  bad: '"id": "6X4 GT"',
  good: '"id": "6x4gt"',
  check: (record) => shapeComplaints(record, (code) => !ELSEWHERE.has(code)),
};
