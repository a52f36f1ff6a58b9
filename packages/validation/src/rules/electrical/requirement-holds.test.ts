import { grader } from "../../run/validateAll.ts";
import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { requirementHolds } from "./requirement-holds.ts";

testRule(
  requirementHolds,
  {
    fires: [
      {
        name: "a ripple that nobody has",
        file: AT.stage,
        change: [['"ripple(\\"b-plus\\") <= 0.01 * volts(\\"b-plus\\")"', '«"ripple(\\"b-plus\\") <= 0.00001 * volts(\\"b-plus\\")"»']],
        options: { electrical: true },
      },
    ],
    passes: [{ name: "a looser one", file: AT.stage, change: [["0.01 * volts", "0.02 * volts"]], options: { electrical: true } }],
  },
  grader,
);
