import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { conditionKnown } from "./condition-known.ts";

testRule(conditionKnown, {
  fires: [{ name: "a misspelt condition", file: AT.stage, change: [['"condition": "operating"', '"condition": «"operate"»']] }],
  passes: [{ name: "another", file: AT.stage, change: [['"condition": "operating"', '"condition": "standby"']] }],
});
