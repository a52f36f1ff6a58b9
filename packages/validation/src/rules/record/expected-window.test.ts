import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { expectedWindow } from "./expected-window.ts";

testRule(expectedWindow, {
  fires: [
    { name: "upside down", file: AT.stage, change: [['"high": 153', '"high": «120»']] },
    {
      name: "a substitute that must be larger than it may",
      file: AT.stage,
      change: [
        [
          '"typical": "1 kohm 2 W",',
          '"typical": "1 kohm 2 W",\n      "substitute": { "lowest": 1.9, "highest": «1.1», "source": "common-practice" },',
        ],
      ],
    },
    { name: "an era that ends before it begins", file: AT.note, change: [['"to": 1980', '"to": «1920»']] },
    { name: "a share", file: AT.thumb, change: [['"high": 0.15', '"high": «0.05»']] },
  ],
  passes: [{ name: "a narrow one", file: AT.stage, change: [['"high": 153', '"high": 125.1']] }],
});
