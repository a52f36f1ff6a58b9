import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { unitSpelling } from "./unit-spelling.ts";

testRule(unitSpelling, {
  fires: [
    { name: "microfarads", file: AT.stage, change: [['"typical": "40 uF 250 V"', '"typical": "40 «mfd» 250 V"']] },
    { name: "picofarads", file: AT.stage, change: [['"typical": "40 uF 250 V"', '"typical": "250«mmf» 250 V"']] },
  ],
  passes: [{ name: "modern", file: AT.stage, change: [['"typical": "40 uF 250 V"', '"typical": "47 uF 250 V"']] }],
});
