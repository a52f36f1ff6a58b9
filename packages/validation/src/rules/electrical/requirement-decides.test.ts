import { grader } from "../../run/validateAll.ts";
import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { requirementDecides } from "./requirement-decides.ts";

const RIPPLE = '"ripple(\\"b-plus\\") <= 0.01 * volts(\\"b-plus\\")"';
const options = { electrical: true } as const;
const fires = (name: string, to: string) => ({ name, file: AT.stage, change: [[RIPPLE, to] as const], options });

testRule(
  requirementDecides,
  {
    fires: [
      fires("a part held to a share of itself", '"«reservoir.ratedVolts >= 0.5 * reservoir.ratedVolts»"'),
      fires("farads above nothing", '"«reservoir.farads >= 0»"'),
      fires("one of two that cannot fail", '"reservoir.ratedVolts >= volts(\\"b-plus\\") and «reservoir.farads >= reservoir.farads»"'),
      fires("two that cannot both fail", '"«reservoir.farads > 0.00001 or reservoir.farads <= 0.00001»"'),
    ],
    passes: [
      { name: "a rating above what it bears", file: AT.stage, change: [], options },
      fires("volts that may be negative", '"volts(\\"b-plus\\") >= 0"'),
      fires("two that must not be alike", '"reservoir.farads != rectifier.ohms"'),
    ],
  },
  grader,
);
