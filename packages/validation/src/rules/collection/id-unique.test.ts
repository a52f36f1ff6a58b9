import { testRule } from "../../testing/ruleCase.ts";
import { AT, SOUND_FILES } from "../../testing/soundFiles.ts";
import { idUnique } from "./id-unique.ts";

testRule(idUnique, {
  fires: [
    {
      name: "two tubes with one name",
      file: "datasets/tubes/z4.json",
      text: SOUND_FILES[AT.tube].replace('"6x4"', '"z4"').replace('"6X4", "EZ90"', '"Z4", «"ez90"»'),
      says: "EZ90",
    },
  ],
  passes: [
    {
      name: "two tubes with names of their own",
      file: "datasets/tubes/z4.json",
      text: SOUND_FILES[AT.tube].replace('"6x4"', '"z4"').replace('"6X4", "EZ90"', '"Z4"'),
    },
  ],
});
