import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { formulaName } from "./formula-name.ts";

testRule(formulaName, {
  fires: [
    {
      name: "a misspelt role",
      file: AT.stage,
      change: [["reservoir.ratedVolts >= reservoir.maxVolts", "«reservior».ratedVolts >= reservoir.maxVolts"]],
      nearest: "reservoir",
    },
    {
      name: "a misspelt property, behind quote marks",
      file: AT.stage,
      change: [['ripple(\\"b-plus\\") <= 0.01 * volts(\\"b-plus\\")', 'volts(\\"b-plus\\") > reservoir.«ratedVolt»']],
      nearest: "ratedVolts",
    },
    {
      name: "a limit by another word",
      file: AT.stage,
      change: [["reservoir.ratedVolts >= reservoir.maxVolts", "rectifier.«maxInverseVolts» > reservoir.maxVolts"]],
      nearest: "limitInverseVolts",
    },
    {
      name: "a plain name",
      file: AT.stage,
      change: [["reservoir.ratedVolts >= reservoir.maxVolts", "reservoir.ratedVolts >= «lineVolt»"]],
      nearest: "lineVolts",
    },
    {
      name: "every place of it",
      file: AT.stage,
      change: [["reservoir.ratedVolts >= reservoir.maxVolts", "«x» >= reservoir.maxVolts and «x» > 1"]],
    },
  ],
  passes: [
    {
      name: "the name of a point that looks like one",
      file: AT.stage,
      change: [["reservoir.ratedVolts >= reservoir.maxVolts", 'volts(\\"input\\") > lineVolts']],
    },
  ],
});
