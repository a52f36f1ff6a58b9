import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { sourceKnown } from "./source-known.ts";

testRule(sourceKnown, {
  fires: [
    {
      name: "in a template",
      file: AT.stage,
      change: [
        ['"typical": "1 kohm 2 W",\n      "source": "common-practice"', '"typical": "1 kohm 2 W",\n      "source": «"comon-practice"»'],
      ],
      nearest: "common-practice",
    },
    { name: "in a table", file: AT.bands, change: [["black,0,,from-memory", "black,0,,«rc30»"]] },
  ],
  passes: [{ name: "another that there is", file: AT.bands, change: [["black,0,,from-memory", "black,0,,common-practice"]] }],
});
