import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { choiceKnown } from "./choice-known.ts";

testRule(choiceKnown, {
  fires: [
    {
      name: "a word of one's own",
      file: AT.stage,
      change: [['"kind": "capacitor"', '"kind": «"condenser"»']],
      says: "kind",
      nearest: "capacitor",
    },
    { name: "a misspelt choice", file: AT.stage, change: [['"severity": "watch"', '"severity": «"wacth"»']], nearest: "watch" },
  ],
  passes: [{ name: "another choice", file: AT.stage, change: [['"severity": "watch"', '"severity": "adjust"']] }],
});
