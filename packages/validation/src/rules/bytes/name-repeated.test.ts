import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { nameRepeated } from "./name-repeated.ts";

testRule(nameRepeated, {
  fires: [
    { name: "a heater with two voltages", file: AT.tube, change: [['"volts": 6.3, "amps"', '"volts": 6.3, «"volts"»: 12.6, "amps"']] },
    { name: "a name with an escape", file: AT.tube, change: [['"volts": 6.3, "amps"', '"volts": 6.3, «"v\\u006flts"»: 12.6, "amps"']] },
  ],
  passes: [
    {
      name: "the same name in two objects",
      file: AT.tube,
      change: [['"title": "Full', '"note": "volts: 6.3, \\"volts\\": 7",\n  "title": "Full']],
    },
  ],
});
