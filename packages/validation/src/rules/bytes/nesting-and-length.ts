import type { BytesRule } from "../../model/rule.ts";
import { syntaxComplaints } from "../../shared/syntaxComplaints.ts";

/** Nothing is nested, or goes on, without end. */
export const nestingAndLength: BytesRule = {
  code: "UC-204",
  name: "nesting-and-length",
  scope: "bytes",
  severity: "error",
  title: "Brackets are nested at most 40 deep, lists have at most 4000 entries",
  why: "Deeper or longer files can only be meant to exhaust who reads them.",
  bad: "[[[[ ... a thousand brackets",
  good: "a list of parts",
  check: (file) => syntaxComplaints(file, (code) => code === "nesting-too-deep" || code === "file-too-large" || code === "list-length"),
};
