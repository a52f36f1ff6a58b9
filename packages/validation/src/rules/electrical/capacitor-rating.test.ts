import { grader } from "../../run/validateAll.ts";
import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { capacitorRating } from "./capacitor-rating.ts";

testRule(
  capacitorRating,
  {
    fires: [
      {
        name: "too few volts",
        file: AT.stage,
        change: [
          ['"role": "reservoir"', '"role": «"reservoir"»'],
          ["40 uF 250 V", "40 uF 150 V"],
        ],
        options: { electrical: true },
      },
    ],
    passes: [{ name: "just enough", file: AT.stage, change: [["40 uF 250 V", "40 uF 180 V"]], options: { electrical: true } }],
  },
  grader,
);
