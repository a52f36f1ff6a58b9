import { grader } from "../../run/validateAll.ts";
import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { capacitorPolarity } from "./capacitor-polarity.ts";

testRule(
  capacitorPolarity,
  {
    fires: [
      {
        name: "turned",
        file: AT.stage,
        change: [
          ['"role": "reservoir"', '"role": «"reservoir"»'],
          ['"between": ["input", "return"]', '"between": ["return", "input"]'],
        ],
        options: { electrical: true },
      },
    ],
    passes: [
      {
        name: "not polarised",
        file: AT.stage,
        change: [
          ['"polarised": true', '"polarised": false'],
          ['"between": ["input", "return"]', '"between": ["return", "input"]'],
        ],
        options: { electrical: true },
      },
    ],
  },
  grader,
);
