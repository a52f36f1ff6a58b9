import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { valueReadable } from "./value-readable.ts";

testRule(valueReadable, {
  fires: [
    { name: "no value", file: AT.stage, change: [['"typical": "1 kohm 2 W"', '"typical": "«2 W»"']], says: "2 W" },
    { name: "a battery of no volts", file: AT.stage, change: [['"value": "125 V"', '"value": "125 «A»"']] },
  ],
  passes: [{ name: "an old spelling", file: AT.stage, change: [['"typical": "40 uF 250 V"', '"typical": "40 mfd 250 V"']] }],
});
