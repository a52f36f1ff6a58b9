import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { formulaProperty } from "./formula-property.ts";

testRule(formulaProperty, {
  fires: [
    { name: "ohms of a capacitor", file: AT.stage, change: [["reservoir.ratedVolts >= reservoir.maxVolts", "reservoir.«ohms» > 10"]] },
  ],
  passes: [
    { name: "farads of a capacitor", file: AT.stage, change: [["reservoir.ratedVolts >= reservoir.maxVolts", "reservoir.farads > 1e-6"]] },
  ],
});
