import { grader } from "../../run/validateAll.ts";
import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { expectedReading } from "./expected-reading.ts";

testRule(
  expectedReading,
  {
    fires: [{ name: "a window too high", file: AT.stage, change: [['"low": 125', '"low": «150»']], options: { electrical: true } }],
    passes: [{ name: "a narrower one", file: AT.stage, change: [['"low": 125', '"low": 128']], options: { electrical: true } }],
  },
  grader,
);
