import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { lineEnds } from "./line-ends.ts";

testRule(lineEnds, {
  fires: [{ name: "the first of two", file: AT.manifest, text: '{\n  "datasetVersion": "0.1.0",«\r»\n  "schemaVersions": {}\r\n}\n' }],
  passes: [{ name: "LF alone", file: AT.manifest, change: [["0.1.0", "0.1.1"]] }],
});
