import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { formulaResult } from "./formula-result.ts";

testRule(formulaResult, {
  fires: [
    {
      name: "a requirement that only computes",
      file: AT.stage,
      change: [["reservoir.ratedVolts >= reservoir.maxVolts", "«1.1 * reservoir.maxVolts»"]],
    },
    {
      name: "a figure that compares",
      file: AT.stage,
      change: [['volts(\\"input\\") - filterResistor.meanAmps * filterResistor.ohms', '«volts(\\"input\\") > 3»']],
    },
    {
      name: "a requirement that looks at nothing",
      file: AT.stage,
      change: [["reservoir.ratedVolts >= reservoir.maxVolts", "«2 > 1»"]],
      says: "looks at nothing",
    },
  ],
  passes: [
    {
      name: "a chain",
      file: AT.stage,
      change: [["reservoir.ratedVolts >= reservoir.maxVolts", "1 < reservoir.maxVolts < reservoir.ratedVolts"]],
    },
  ],
});
