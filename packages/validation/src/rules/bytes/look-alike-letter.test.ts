import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { lookAlikeLetter } from "./look-alike-letter.ts";

testRule(lookAlikeLetter, {
  fires: [
    { name: "a Cyrillic letter in an id", file: AT.stage, change: [['"id": "b-plus"', '"id": "b-pl«у»s"']], nearest: "y" },
    { name: "a full-width letter", file: AT.tube, change: [["Full", "«Ｆ»ull"]], nearest: "F" },
  ],
  passes: [{ name: "a micro sign", file: AT.stage, change: [["40 uF 250 V", "40 μF 250 V"]] }],
});
