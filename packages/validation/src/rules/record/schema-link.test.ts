import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { schemaLink } from "./schema-link.ts";

testRule(schemaLink, {
  fires: [
    {
      name: "another level",
      file: AT.tube,
      change: [
        ['"../../schemas/tube', '«"../schemas/tube'],
        ['.json",', '.json"»,'],
      ],
    },
    { name: "none", file: AT.caution, change: [['{\n  "$schema": "../../schemas/caution.schema.json",', "«{»"]] },
  ],
  passes: [{ name: "none where there is no schema", file: AT.manifest, change: [["0.1.0", "0.1.1"]] }],
});
