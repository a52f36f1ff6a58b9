import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { expectedDimension } from "./expected-dimension.ts";

testRule(expectedDimension, {
  fires: [
    {
      name: "ohms for volts",
      file: AT.stage,
      change: [['volts(\\"input\\") - filterResistor.meanAmps * filterResistor.ohms', "«filterResistor.ohms»"]],
    },
  ],
  passes: [
    {
      name: "a current unsaid",
      file: AT.stage,
      change: [['volts(\\"input\\") - filterResistor.meanAmps * filterResistor.ohms', "140 - 0.02 * filterResistor.ohms"]],
    },
  ],
});
