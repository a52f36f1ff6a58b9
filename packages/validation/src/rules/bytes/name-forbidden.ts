import type { BytesRule } from "../../model/rule.ts";
import { syntaxComplaints } from "../../shared/syntaxComplaints.ts";

/** No property reaches into JavaScript's own objects. */
export const nameForbidden: BytesRule = {
  code: "UC-203",
  name: "name-forbidden",
  scope: "bytes",
  severity: "error",
  title: "No property is called __proto__, constructor or prototype",
  why: "Programs that read the data could be made to change their own workings.",
  bad: '{ "__proto__": { "volts": 6.3 } }',
  good: '{ "heater": { "volts": 6.3 } }',
  check: (file) => syntaxComplaints(file, (code) => code === "name-forbidden"),
};
