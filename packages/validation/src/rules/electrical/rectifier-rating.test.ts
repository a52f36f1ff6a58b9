import { grader } from "../../run/validateAll.ts";
import { testRule } from "../../testing/ruleCase.ts";
import { AT, SOUND_FILES } from "../../testing/soundFiles.ts";
import { rectifierRating } from "./rectifier-rating.ts";

const limited = { [AT.tube]: SOUND_FILES[AT.tube].replace('"dcAmps": 0.07', '"dcAmps": 0.07, "maxInputFarads": 0.00002') };

testRule(
  rectifierRating,
  {
    fires: [
      {
        name: "too little inverse voltage",
        file: AT.stage,
        change: [
          ['"role": "rectifier"', '"role": «"rectifier"»'],
          ['"1N4007"', '"1N4001"'],
        ],
        others: { [AT.diodes]: "class,pivVolts,averageAmps,source\n1N4001,50,1,from-memory\n1N4004,400,1,from-memory\n" },
        options: { electrical: true },
      },
      {
        name: "a capacitor larger than the tube's sheet allows",
        file: AT.stage,
        change: [
          ['"type": "1N4007"', '"type": "6X4"'],
          [
            '"typical": "40 uF 250 V",\n      "polarised": true,',
            '"typical": «"40 uF 250 V"»,\n      "polarised": true,\n      "duty": "filter-input",',
          ],
        ],
        others: limited,
        says: "input capacitor",
        options: { electrical: true },
      },
    ],
    passes: [
      {
        name: "the largest capacitor that it allows",
        file: AT.stage,
        change: [
          ['"type": "1N4007"', '"type": "6X4"'],
          [
            '"typical": "40 uF 250 V",\n      "polarised": true,',
            '"typical": "20 uF 250 V",\n      "polarised": true,\n      "duty": "filter-input",',
          ],
        ],
        others: limited,
        options: { electrical: true },
      },
      { name: "enough", file: AT.stage, change: [['"1N4007"', '"1N4004"']], options: { electrical: true } },
    ],
  },
  grader,
);
