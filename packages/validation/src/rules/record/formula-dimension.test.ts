import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { formulaDimension } from "./formula-dimension.ts";

testRule(formulaDimension, {
  fires: [
    {
      name: "volts and farads",
      file: AT.stage,
      change: [["reservoir.ratedVolts >= reservoir.maxVolts", "reservoir.ratedVolts >= «1.1 * reservoir.farads»"]],
    },
    {
      name: "a sum inside",
      file: AT.stage,
      change: [['ripple(\\"b-plus\\") <= 0.01 * volts(\\"b-plus\\")', 'volts(\\"b-plus\\") + «filterResistor.ohms» > 2']],
    },
    {
      name: "an argument",
      file: AT.stage,
      change: [["reservoir.ratedVolts >= reservoir.maxVolts", "max(reservoir.maxVolts, «reservoir.farads») > 1"]],
    },
    { name: "a logarithm", file: AT.stage, change: [["reservoir.ratedVolts >= reservoir.maxVolts", "log(«filterResistor.ohms») > 1"]] },
  ],
  passes: [
    { name: "a current unsaid", file: AT.stage, change: [["filterResistor.meanAmps * filterResistor.ohms", "0.02 * filterResistor.ohms"]] },
    { name: "a bare limit", file: AT.stage, change: [["reservoir.ratedVolts >= reservoir.maxVolts", "filterResistor.ohms < 40000"]] },
    {
      name: "ohms law",
      file: AT.stage,
      change: [["reservoir.ratedVolts >= reservoir.maxVolts", "reservoir.ratedVolts >= filterResistor.meanAmps * filterResistor.ohms"]],
    },
  ],
});
