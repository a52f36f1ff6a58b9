import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { exampleResult } from "./example-result.ts";

// The sound example: two resistors of 100 ohm side by side make 50 ohm, to half an ohm.
const erratum = (value: string) =>
  ['"result": "50",', `"result": "60",\n      "erratum": { "value": ${value}, "why": "the sum over the product" },`] as const;

testRule(exampleResult, {
  fires: [
    { name: "another result", file: AT.examples, change: [['"result": "50"', '"result": «"51"»']] },
    {
      name: "an input in another unit",
      file: AT.examples,
      change: [['["100 ohm", "100 ohm"]', '["100 ohm", «"100 V"»]']],
      says: "voltage",
    },
    { name: "a result in another unit", file: AT.examples, change: [['"unit": "ohm"', '"unit": «"V"»']] },
    { name: "a correction that does not hold", file: AT.examples, change: [erratum('«"55"»')] },
  ],
  passes: [
    { name: "the last digit rounded", file: AT.examples, change: [['"result": "50"', '"result": "50.4"']] },
    {
      name: "another prefix",
      file: AT.examples,
      change: [['"result": "50",\n      "unit": "ohm"', '"result": "0.05",\n      "unit": "kohm"']],
    },
    { name: "a misprint and its correction", file: AT.examples, change: [erratum('"50"')] },
    {
      name: "a formula that there is not, which another rule tells",
      file: AT.examples,
      change: [["parallel-resistance", "parallel-resistence"]],
    },
  ],
});
