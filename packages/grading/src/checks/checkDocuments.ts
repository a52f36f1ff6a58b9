import type { FindDocument } from "@underchassis/dataset";
import { allChecks } from "./allChecks.ts";

/** The checks as documents that can be looked up: question, needs, and how they show in a report. */
export function checkDocuments(): FindDocument[] {
  return allChecks.map(({ id, area, title, question, needs }) => ({
    kind: "check",
    id,
    title,
    texts: [question, `It needs ${needs.replace(/\.$/, "")}.`, `Area: ${area}.`],
    use: "made by itself when a job is graded; its findings carry this id",
  }));
}
