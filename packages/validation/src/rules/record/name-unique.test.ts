import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { nameUnique } from "./name-unique.ts";

testRule(nameUnique, {
  fires: [
    { name: "a role", file: AT.stage, change: [['"role": "outputCapacitor"', '"role": «"reservoir"»']] },
    { name: "a point that is a terminal", file: AT.stage, change: [['"points": { "input"', '"points": { «"hv"»: "x", "input"']] },
    {
      name: "a measurement",
      file: AT.stage,
      change: [['"typical": "1 kohm 2 W",', '"typical": "1 kohm 2 W",\n      "measure": ["resistance", «"resistance"»],']],
    },
    { name: "a tube's name in other letters", file: AT.tube, change: [['"EZ90"', '«"6x4"»']] },
  ],
  passes: [{ name: "names that are near", file: AT.stage, change: [['"role": "outputCapacitor"', '"role": "reservoir2"']] }],
});
