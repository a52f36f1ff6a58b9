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
      {
        name: "a source that is shorted through the rectifier",
        file: AT.stage,
        change: [
          ['"role": "rectifier"', '"role": «"rectifier"»'],
          ['"value": "60 ohm"', '"value": "0.000001 ohm"'],
          [
            '"kind": "load", "between": ["b-plus", "return"], "value": "20 mA"',
            '"kind": "resistor", "between": ["input", "return"], "value": "0.000001 ohm"',
          ],
        ],
        says: "shorted through rectifier",
        options: { electrical: true },
      },
      {
        name: "a rectifier the wrong way round, behind which a load draws on nothing",
        file: AT.stage,
        change: [
          ['"role": "rectifier"', '"role": «"rectifier"»'],
          ['"between": ["hv", "input"],\n      "type": "1N4007"', '"pins": { "plate": "input", "cathode": "hv" },\n      "type": "6X4"'],
        ],
        says: "no source feeds",
        options: { electrical: true },
      },
    ],
    passes: [{ name: "a smaller source", file: AT.stage, change: [["125 V", "120 V"]], options: { electrical: true } }],
  },
  grader,
);
