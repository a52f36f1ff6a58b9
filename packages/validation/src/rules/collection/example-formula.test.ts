import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { exampleFormula } from "./example-formula.ts";

testRule(exampleFormula, {
  fires: [
    {
      name: "a misspelt formula",
      file: AT.examples,
      change: [['"parallel-resistance"', '«"paralel-resistance"»']],
      nearest: "parallel-resistance",
    },
    { name: "another argument", file: AT.examples, change: [['"ohms": [', '«"resistances"»: [']] },
    { name: "another result", file: AT.examples, change: [['"totalOhms"', '«"ohms"»']] },
  ],
  passes: [{ name: "another number", file: AT.examples, change: [['"result": "50"', '"result": "51"']] }],
});
