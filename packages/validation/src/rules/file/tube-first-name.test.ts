import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { tubeFirstName } from "./tube-first-name.ts";

testRule(tubeFirstName, {
  fires: [{ name: "another name first", file: AT.tube, change: [['["6X4", "EZ90"]', '[«"EZ90"», "6X4"]']] }],
  passes: [{ name: "other names", file: AT.tube, change: [['"EZ90"', '"6063"']] }],
});
