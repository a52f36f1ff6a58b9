import type { RecordRule } from "../../model/rule.ts";
import { shapeComplaints } from "../../shared/shapeComplaints.ts";

/** Every value is of the type that its property takes. */
export const valueType: RecordRule = {
  code: "UC-303",
  name: "value-type",
  scope: "record",
  phase: "shape",
  severity: "error",
  title: "Every value is of the type that its property takes",
  why: "A number in quotes is a text to every program that computes with it.",
  bad: '"volts": "6.3"',
  good: '"volts": 6.3',
  check: (record) => shapeComplaints(record, (code) => code === "type-wrong"),
};
