import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { datasetVersion } from "./dataset-version.ts";

testRule(datasetVersion, {
  fires: [
    { name: "two numbers", file: AT.manifest, change: [['"0.1.0"', '«"0.1"»']] },
    { name: "half a version", file: AT.manifest, change: [['"tube": 1', '"tube": «1.5»']] },
  ],
  passes: [{ name: "a later one", file: AT.manifest, change: [["0.1.0", "1.12.3"]] }],
});
