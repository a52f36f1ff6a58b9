import { grader } from "../../run/validateAll.ts";
import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { resistorRating } from "./resistor-rating.ts";

testRule(
  resistorRating,
  {
    fires: [
      {
        name: "too few watts",
        file: AT.stage,
        change: [
          ['"role": "filterResistor"', '"role": «"filterResistor"»'],
          ["1 kohm 2 W", "1 kohm 0.25 W"],
        ],
        options: { electrical: true },
      },
    ],
    passes: [{ name: "half a watt, at 0.4", file: AT.stage, change: [["1 kohm 2 W", "1 kohm 0.5 W"]], options: { electrical: true } }],
  },
  grader,
);
