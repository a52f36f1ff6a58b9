import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { sentenceLength } from "./sentence-length.ts";

testRule(sentenceLength, {
  fires: [
    {
      name: "forty-one words",
      file: AT.caution,
      change: [
        [
          "Measure before touching.",
          "«one one one one one one one one one one one one one one one one one one one one one one one one one one one one one one one one one one one one one one one one end.»",
        ],
      ],
    },
  ],
  passes: [
    {
      name: "forty words",
      file: AT.caution,
      change: [
        [
          "Measure before touching.",
          "one one one one one one one one one one one one one one one one one one one one one one one one one one one one one one one one one one one one one one one end.",
        ],
      ],
    },
  ],
});
