import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { deviceKnown } from "./device-known.ts";

testRule(deviceKnown, {
  fires: [{ name: "a misspelt diode", file: AT.stage, change: [['"1N4007"', '«"1N407"»']], nearest: "1N4007" }],
  passes: [
    { name: "a tube by its other name, in small letters", file: AT.stage, change: [['"1N4007"', '"ez90"']] },
    { name: "ratings in words", file: AT.stage, change: [['"1N4007"', '"selenium 130 V 100 mA"']] },
  ],
});
