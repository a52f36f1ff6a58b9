import { recordOf } from "@underchassis/source-text";
import type { FileRule } from "../../model/rule.ts";

/** A file is called what its record is called. */
export const fileName: FileRule = {
  code: "UC-501",
  name: "file-name",
  scope: "file",
  of: "record",
  severity: "error",
  title: "A record's id is its file's name",
  why: "Then an id leads to its file, and no two files fight for one id.",
  bad: 'datasets/tubes/6x4.json with "id": "6x5"',
  good: 'datasets/tubes/6x4.json with "id": "6x4"',
  kinds: ["stage", "tube", "caution", "failure-note", "rule-of-thumb", "worked-example"],
  check({ path, value }) {
    const { id } = recordOf(value);
    const name = path.slice(path.lastIndexOf("/") + 1).replace(/\.json$/, "");
    return typeof id !== "string" || id === name
      ? []
      : [{ at: { path: ["id"] }, message: "the id is not the file's name", received: id, expected: name }];
  },
};
