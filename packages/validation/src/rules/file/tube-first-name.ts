import { listOf, recordOf } from "@underchassis/source-text";
import type { FileRule } from "../../model/rule.ts";

/** A tube's id is its usual name. */
export const tubeFirstName: FileRule = {
  code: "UC-503",
  name: "tube-first-name",
  scope: "file",
  of: "record",
  severity: "error",
  title: "The first name of a tube is its id in capitals",
  why: "Reports print the first name; it is the one that the file is found under.",
  bad: '"id": "6x4", "names": ["EZ90", "6X4"]',
  good: '"id": "6x4", "names": ["6X4", "EZ90"]',
  kinds: ["tube"],
  check({ value }) {
    const { id, names } = recordOf(value);
    const [first] = listOf(names);
    if (typeof id !== "string" || typeof first !== "string" || first.toLowerCase().replace(/[^a-z0-9]+/g, "-") === id) return [];
    return [{ at: { path: ["names", 0] }, message: "the first name is not the id", received: first, expected: id.toUpperCase() }];
  },
};
