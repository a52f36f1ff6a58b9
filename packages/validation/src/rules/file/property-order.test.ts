import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { propertyOrder } from "./property-order.ts";

testRule(propertyOrder, {
  fires: [
    {
      name: "two exchanged",
      file: AT.caution,
      change: [
        [
          '"title": "Stored charge",\n  "text": "Filter capacitors hold their charge. Measure before touching.",',
          '"text": "Filter capacitors hold their charge. Measure before touching.",\n  «"title"»: "Stored charge",',
        ],
      ],
    },
    {
      name: "inside a part",
      file: AT.stage,
      change: [
        ['"role": "filterResistor",\n      "title": "Filter resistor",', '"title": "Filter resistor",\n      «"role"»: "filterResistor",'],
      ],
    },
  ],
  passes: [{ name: "maps have no order", file: AT.manifest, change: [['{ "stage": 1, "tube": 1 }', '{ "tube": 1, "stage": 1 }']] }],
});
