import { recordOf } from "@underchassis/source-text";
import type { RecordRule } from "../../model/rule.ts";
import { schemaLinkOf } from "../../shared/schemaLinkOf.ts";

/** The schema that editors complete from is named, and is the right one. */
export const schemaLink: RecordRule = {
  code: "UC-306",
  name: "schema-link",
  scope: "record",
  severity: "error",
  title: "Every record names its schema",
  why: "Editors complete and check from it; a wrong one marks right things wrong.",
  bad: '"$schema": "../schemas/tube.schema.json"',
  good: '"$schema": "../../schemas/tube.schema.json"',
  fixable: true,
  check({ path, kind, value }) {
    const expected = schemaLinkOf(path, kind);
    if (expected === undefined) return [];
    const { $schema: written } = recordOf(value);
    if (written === expected) return [];
    return [
      written === undefined
        ? { at: { path: [], part: "key" }, message: 'no "$schema"', expected: `"$schema": "${expected}"` }
        : { at: { path: ["$schema"] }, message: "the schema is not the one of this file", received: String(written), expected },
    ];
  },
};
