import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { valueType } from "./value-type.ts";

testRule(valueType, {
  fires: [{ name: "a number in quotes", file: AT.tube, change: [['"volts": 6.3', '"volts": «"6.3"»']] }],
  passes: [{ name: "a whole number for a number", file: AT.tube, change: [['"volts": 6.3', '"volts": 6']] }],
});
