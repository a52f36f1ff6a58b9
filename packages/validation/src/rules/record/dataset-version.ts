import { isRecord, recordOf } from "@underchassis/source-text";
import { valid } from "semver";
import type { Complaint, RecordRule } from "../../model/rule.ts";

/** The manifest has a version that can be compared. */
export const datasetVersion: RecordRule = {
  code: "UC-421",
  name: "dataset-version",
  scope: "record",
  severity: "error",
  title: "The manifest says which version of the data this is, as three numbers, and of each schema as a whole number",
  why: "Jobs are graded again by version; a version that cannot be compared compares nothing.",
  bad: '"datasetVersion": "1.2"',
  good: '"datasetVersion": "1.2.0"',
  kinds: ["manifest"],
  check({ value }) {
    const { datasetVersion: version, schemaVersions } = recordOf(value);
    const complaints: Complaint[] = [];
    if (typeof version !== "string" || valid(version) !== version)
      complaints.push({
        at: { path: ["datasetVersion"], part: version === undefined ? "key" : "value" },
        message: "the dataset has no version that can be compared",
        received: String(version),
        expected: "three numbers with points between: 1.4.0",
      });
    if (!isRecord(schemaVersions))
      return [
        ...complaints,
        { at: { path: ["schemaVersions"], part: "key" }, message: 'no "schemaVersions"', expected: "a version a schema" },
      ];
    for (const [name, number] of Object.entries(schemaVersions))
      if (!Number.isInteger(number) || Number(number) < 1)
        complaints.push({
          at: { path: ["schemaVersions", name] },
          message: `the version of the schema "${name}" is no whole number`,
          received: String(number),
          expected: "1 or more",
        });
    return complaints;
  },
};
