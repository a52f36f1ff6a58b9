import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { formulaSyntax } from "./formula-syntax.ts";

testRule(formulaSyntax, {
  fires: [
    { name: "a conditional", file: AT.stage, change: [["reservoir.ratedVolts >= reservoir.maxVolts", "«reservoir.farads > 1 ? 1 : 0»"]] },
    {
      name: "a function that there is not",
      file: AT.stage,
      change: [["reservoir.ratedVolts >= reservoir.maxVolts", "reservoir.ratedVolts >= «sinh(1»)"]],
      says: "sinh",
    },
    {
      name: "behind escaped quote marks",
      file: AT.stage,
      change: [['ripple(\\"b-plus\\") <= 0.01 * volts(\\"b-plus\\")', 'volts(\\"b-plus\\") >= «sinh(1»)']],
    },
    { name: "a sign too few", file: AT.stage, change: [["reservoir.ratedVolts >= reservoir.maxVolts", "reservoir.ratedVolts >«=»"]] },
  ],
  passes: [
    {
      name: "a longer formula",
      file: AT.stage,
      change: [["reservoir.ratedVolts >= reservoir.maxVolts", "reservoir.ratedVolts >= reservoir.maxVolts and reservoir.farads > 1e-6"]],
    },
  ],
});
