import { grader } from "../../run/validateAll.ts";
import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { stageSimulates } from "./stage-simulates.ts";

testRule(
  stageSimulates,
  {
    fires: [
      {
        name: "a point in the air",
        file: AT.stage,
        change: [
          ['{ "kind": "ac-source", "between": ["source-a", "return"], "value": "125 V" },\n      ', ""],
          ['"between": ["source-a", "hv"]', '"between": [«"source-a"», "source-b"]'],
        ],
        options: { electrical: true },
      },
      {
        name: "a misspelt point of the surroundings",
        file: AT.stage,
        change: [['"between": ["source-a", "hv"]', '"between": [«"sourc-a"», "hv"]']],
        options: { electrical: true },
      },
    ],
    passes: [{ name: "a smaller source", file: AT.stage, change: [["125 V", "120 V"]], options: { electrical: true } }],
  },
  grader,
);
