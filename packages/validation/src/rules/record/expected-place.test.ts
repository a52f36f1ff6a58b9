import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { expectedPlace } from "./expected-place.ts";

testRule(expectedPlace, {
  fires: [
    { name: "a current at a point", file: AT.stage, change: [['"quantity": "dc-volts"', '"quantity": «"dc-amps"»']] },
    {
      name: "a misspelt part",
      file: AT.stage,
      change: [
        [
          '"at": "b-plus",\n      "to": "return",\n      "quantity": "dc-volts"',
          '"part": «"filterResister"»,\n      "quantity": "dc-amps"',
        ],
      ],
      nearest: "filterResistor",
    },
  ],
  passes: [
    {
      name: "a current through a part",
      file: AT.stage,
      change: [
        ['"at": "b-plus",\n      "to": "return",\n      "quantity": "dc-volts"', '"part": "filterResistor",\n      "quantity": "dc-amps"'],
      ],
    },
  ],
});
