import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { stageFolder } from "./stage-folder.ts";

testRule(stageFolder, {
  fires: [{ name: "another family", file: AT.stage, change: [['"family": "supply"', '"family": «"audio"»']] }],
  passes: [{ name: "the same", file: AT.stage, change: [["Small supply", "Smaller supply"]] }],
});
