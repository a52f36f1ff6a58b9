import type { BytesRule } from "../../model/rule.ts";
import { syntaxComplaints } from "../../shared/syntaxComplaints.ts";

/** The file is CSV. */
export const csvSyntax: BytesRule = {
  code: "UC-206",
  name: "csv-syntax",
  scope: "bytes",
  severity: "error",
  title: "Tables are comma-separated, with quote marks in pairs",
  why: "Until the quoting is right, no row behind it can be checked.",
  bad: '1/4" fuse,250',
  good: '"1/4"" fuse",250',
  kinds: ["table", "sources"],
  check: (file) => syntaxComplaints(file, (code) => code !== "name-duplicate").map((complaint) => ({ ...complaint, rank: -1 })),
};
