import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { jsonSyntax } from "./json-syntax.ts";

testRule(jsonSyntax, {
  fires: [
    { name: "a missing comma", file: AT.tube, change: [['"id": "6x4",\n  "names"', '"id": "6x4"\n  «"names"»']], says: "comma" },
    { name: "a comma too many", file: AT.manifest, change: [['"tube": 1 }', '"tube": 1«,» }']] },
    { name: "a comment", file: AT.manifest, change: [["{\n", "{\n  «// version»\n"]] },
  ],
  passes: [{ name: "strict JSON", file: AT.manifest, change: [["0.1.0", "0.1.1"]] }],
});
