import type { BytesRule } from "../../model/rule.ts";
import { syntaxComplaints } from "../../shared/syntaxComplaints.ts";

/** No property is written twice in one object. */
export const nameRepeated: BytesRule = {
  code: "UC-202",
  name: "name-repeated",
  scope: "bytes",
  severity: "error",
  title: "No property stands twice in one object",
  why: "Readers of JSON keep one of the two without a word, and not all the same one.",
  bad: '{ "volts": 6.3, "volts": 12.6 }',
  good: '{ "volts": 6.3 }',
  check: (file) => syntaxComplaints(file, (code) => code === "name-duplicate"),
};
