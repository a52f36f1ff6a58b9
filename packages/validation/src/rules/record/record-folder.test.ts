import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { recordFolder } from "./record-folder.ts";

testRule(recordFolder, {
  fires: [
    {
      name: "a caution that says it is a tube",
      file: AT.caution,
      change: [['"../../schemas/caution.schema.json"', '«"../../schemas/tube.schema.json"»']],
    },
  ],
  passes: [{ name: "a schema that there is none of", file: AT.caution, change: [["caution.schema.json", "hazard.schema.json"]] }],
});
