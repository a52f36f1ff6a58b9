import type { RecordRule } from "../../model/rule.ts";
import { shapeComplaints } from "../../shared/shapeComplaints.ts";

/** Every choice is one of those that there are. */
export const choiceKnown: RecordRule = {
  code: "UC-304",
  name: "choice-known",
  scope: "record",
  phase: "shape",
  severity: "error",
  title: "Where the schema gives choices, the value is one of them",
  why: "Checks look for the choices; a word of one's own is found by none.",
  bad: '"kind": "condenser"',
  good: '"kind": "capacitor"',
  check: (record) => shapeComplaints(record, (code) => code === "choice-unknown"),
};
