import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { formulaPoint } from "./formula-point.ts";

testRule(formulaPoint, {
  fires: [
    {
      name: "a misspelt point",
      file: AT.stage,
      change: [['ripple(\\"b-plus\\") <= 0.01 * volts(\\"b-plus\\")', 'ripple(\\"«bplus»\\") <= 0.01 * volts(\\"b-plus\\")']],
      nearest: "b-plus",
    },
  ],
  passes: [
    {
      name: "an inner point",
      file: AT.stage,
      change: [['ripple(\\"b-plus\\") <= 0.01 * volts(\\"b-plus\\")', 'ripple(\\"input\\") <= 0.2 * volts(\\"input\\")']],
    },
  ],
});
