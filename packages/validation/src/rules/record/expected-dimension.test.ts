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
    {
      name: "a rule of thumb in another unit",
      file: AT.thumb,
      change: [['"expression": "0.1 * loadAmps"', '"expression": "«0.1 * loadOhms»"']],
    },
    { name: "a unit that is none", file: AT.thumb, change: [['"unit": "A",', '"unit": «"mA"»,']] },
  ],
  passes: [
    {
      name: "a current unsaid",
      file: AT.stage,
      change: [['volts(\\"input\\") - filterResistor.meanAmps * filterResistor.ohms', "140 - 0.02 * filterResistor.ohms"]],
    },
  ],
});
