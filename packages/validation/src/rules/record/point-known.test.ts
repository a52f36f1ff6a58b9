import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { pointKnown } from "./point-known.ts";

testRule(pointKnown, {
  fires: [
    { name: "a misspelt end", file: AT.stage, change: [['"between": ["hv", "input"]', '"between": ["hv", «"inptu"»]']], nearest: "input" },
    {
      name: "an unused terminal",
      file: AT.stage,
      change: [['"terminals": [', '"terminals": [{ "id": «"spare"», "meaning": "Nothing." },']],
    },
    { name: "an unused point", file: AT.stage, change: [['"points": {', '"points": { «"spare"»: "Nothing.",']] },
  ],
  passes: [
    {
      name: "a point of the surround",
      file: AT.stage,
      change: [
        ['"between": ["source-a", "hv"]', '"between": ["source-a", "hv"]'],
        ['"between": ["source-a", "return"]', '"between": ["source-a", "return"]'],
      ],
    },
  ],
});
