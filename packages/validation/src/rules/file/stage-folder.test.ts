import { testRule } from "../../testing/ruleCase.ts";
import { AT, SOUND_FILES } from "../../testing/soundFiles.ts";
import { stageFolder } from "./stage-folder.ts";

testRule(stageFolder, {
  fires: [
    { name: "another family", file: AT.stage, change: [['"family": "supply"', '"family": «"audio"»']] },
    {
      name: "a misspelt folder",
      file: "datasets/stages/suply/other-supply.json",
      text: SOUND_FILES[AT.stage].replace('"id": "small-supply"', '"id": "other-supply"'),
      nearest: "supply",
      whole: true,
    },
  ],
  passes: [{ name: "the same", file: AT.stage, change: [["Small supply", "Smaller supply"]] }],
});
