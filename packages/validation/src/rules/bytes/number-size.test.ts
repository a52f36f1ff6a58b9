import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { numberSize } from "./number-size.ts";

testRule(numberSize, {
  fires: [
    { name: "beyond all bounds", file: AT.tube, change: [['"volts": 6.3,', '"volts": «1e400»,']] },
    { name: "too large", file: AT.tube, change: [['"volts": 6.3,', '"volts": «6.3e15»,']] },
    { name: "too many figures", file: AT.tube, change: [['"volts": 6.3,', '"volts": «6.300000000000000001»,']] },
  ],
  passes: [
    { name: "seventeen figures", file: AT.tube, change: [['"volts": 6.3,', '"volts": 6.3000000000000001,']] },
    { name: "digits in a text", file: AT.tube, change: [['"title": "Full', '"note": "12345678901234567890",\n  "title": "Full']] },
  ],
});
