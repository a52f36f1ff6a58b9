import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { kindFit } from "./kind-fit.ts";

testRule(kindFit, {
  fires: [
    {
      name: "a polarised resistor",
      file: AT.stage,
      change: [['"typical": "1 kohm 2 W"', '"typical": "1 kohm 2 W",\n      «"polarised"»: true']],
    },
    {
      name: "a resistor whose capacitance is to be measured",
      file: AT.stage,
      change: [['"typical": "1 kohm 2 W"', '"typical": "1 kohm 2 W",\n      "measure": [«"capacitance"»]']],
    },
    {
      name: "a resistor without a value",
      file: AT.stage,
      change: [
        [
          '"kind": "resistor",\n      "between": ["input", "b-plus"],\n      "typical": "1 kohm 2 W",',
          '"kind": «"resistor"»,\n      "between": ["input", "b-plus"],',
        ],
      ],
    },
  ],
  passes: [
    {
      name: "a capacitor that is not",
      file: AT.stage,
      change: [
        [
          '"polarised": true,\n      "source": "common-practice"\n    },\n    {\n      "role": "filter',
          '"source": "common-practice"\n    },\n    {\n      "role": "filter',
        ],
      ],
    },
  ],
});
