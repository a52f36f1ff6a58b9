import { grader } from "../../run/validateAll.ts";
import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { rectifierRating } from "./rectifier-rating.ts";

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
    ],
    passes: [{ name: "enough", file: AT.stage, change: [['"1N4007"', '"1N4004"']], options: { electrical: true } }],
  },
  grader,
);
