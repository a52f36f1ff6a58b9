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
      {
        name: "a rectifier turned, and with it all that it charges",
        file: AT.stage,
        change: [
          ['"role": "rectifier"', '"role": «"rectifier"»'],
          ['"between": ["hv", "input"]', '"between": ["input", "hv"]'],
          [
            '{ "kind": "load", "between": ["b-plus", "return"], "value": "20 mA" }',
            '{ "kind": "resistor", "between": ["b-plus", "return"], "value": "10 kohm" }',
          ],
        ],
        says: "the rectifier probably does",
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
