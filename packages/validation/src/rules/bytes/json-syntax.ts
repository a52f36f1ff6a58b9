import type { BytesRule } from "../../model/rule.ts";
import { syntaxComplaints } from "../../shared/syntaxComplaints.ts";

/** Codes of the reader that have a rule of their own. */
const ELSEWHERE = new Set(["name-duplicate", "name-forbidden", "nesting-too-deep", "file-too-large", "list-length", "number-not-finite"]);

/** The file is JSON. */
export const jsonSyntax: BytesRule = {
  code: "UC-201",
  name: "json-syntax",
  scope: "bytes",
  severity: "error",
  title: "Records are strict JSON",
  why: "Until the commas and quotes are right, nothing else in the file can be checked.",
  bad: '{ "id": "6x4", }',
  good: '{ "id": "6x4" }',
  check: (file) =>
    file.path.endsWith(".json")
      ? syntaxComplaints(file, (code) => !ELSEWHERE.has(code)).map((complaint) => ({ ...complaint, rank: -1 }))
      : [],
};
