import { grader } from "../../run/validateAll.ts";
import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { expectedFormula } from "./expected-formula.ts";

testRule(
  expectedFormula,
  {
    fires: [
      {
        name: "twice as much",
        file: AT.stage,
        change: [
          ['volts(\\"input\\") - filterResistor.meanAmps * filterResistor.ohms', '2 * volts(\\"input\\")'],
          ['"formula": "2 * volts(\\"input\\")"', '"formula": «"2 * volts(\\"input\\")"»'],
        ],
        options: { electrical: true },
      },
    ],
    passes: [
      {
        name: "a tenth off",
        file: AT.stage,
        change: [['volts(\\"input\\") - filterResistor.meanAmps * filterResistor.ohms', '0.95 * volts(\\"input\\")']],
        options: { electrical: true },
      },
    ],
  },
  grader,
);
