import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { finalNewline } from "./final-newline.ts";

testRule(finalNewline, {
  fires: [
    { name: "no line end", file: AT.manifest, text: '{\n  "datasetVersion": "0.1.0",\n  "schemaVersions": {}\n}«»' },
    { name: "blank lines", file: AT.manifest, text: '{\n  "datasetVersion": "0.1.0",\n  "schemaVersions": {}\n}«»\n\n' },
  ],
  passes: [{ name: "one", file: AT.manifest, change: [["0.1.0", "0.1.1"]] }],
});
