import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { propertyKnown } from "./property-known.ts";

testRule(propertyKnown, {
  fires: [{ name: "a misspelt property", file: AT.stage, change: [['"polarised": true', '«"polarized"»: true']], nearest: "polarised" }],
  passes: [{ name: "one of the schema", file: AT.stage, change: [['"polarised": true', '"polarised": false']] }],
});
