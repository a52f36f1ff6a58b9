import { grader } from "../../run/validateAll.ts";
import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { rectifierDirection } from "./rectifier-direction.ts";

testRule(
  rectifierDirection,
  {
    fires: [
      {
        name: "turned",
        file: AT.stage,
        change: [
          ['"between": ["hv", "input"]', '"between": ["input", "hv"]'],
          ['"low": 125', '"low": «125»'],
        ],
        options: { electrical: true },
      },
    ],
    passes: [{ name: "as it should be", file: AT.stage, change: [["125 V", "120 V"]], options: { electrical: true } }],
  },
  grader,
);
