import { grader } from "../../run/validateAll.ts";
import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { directPath } from "./direct-path.ts";

testRule(
  directPath,
  {
    fires: [
      {
        name: "a resistor between capacitors",
        file: AT.stage,
        change: [
          ['"points": { "input"', '"points": { «"tail"»: "Behind the resistor.", "input"'],
          ['"between": ["input", "b-plus"]', '"between": ["b-plus", "tail"]'],
          [
            '"kind": "resistor",\n      "between": ["b-plus", "return"],\n      "typical": "100 kohm 1 W",\n      "optional": true',
            '"kind": "capacitor",\n      "between": ["tail", "return"],\n      "typical": "1 uF 250 V"',
          ],
          ['{ "id": "b-plus"', '{ "id": «"b-plus"»'],
          [',\n      { "kind": "load", "between": ["b-plus", "return"], "value": "20 mA" }', ""],
        ],
        options: { electrical: true },
      },
    ],
    passes: [
      {
        name: "the same with a load of ohms",
        file: AT.stage,
        change: [
          ['"points": { "input"', '"points": { "tail": "Behind the resistor.", "input"'],
          ['"between": ["input", "b-plus"]', '"between": ["b-plus", "tail"]'],
          [
            '"kind": "resistor",\n      "between": ["b-plus", "return"],\n      "typical": "100 kohm 1 W",\n      "optional": true',
            '"kind": "capacitor",\n      "between": ["tail", "return"],\n      "typical": "1 uF 250 V"',
          ],
          ['{ "id": "b-plus"', '{ "id": "b-plus"'],
          ['"value": "20 mA"', '"value": "1 Mohm"'],
        ],
        options: { electrical: true },
      },
    ],
  },
  grader,
);
