import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { propertyPresent } from "./property-present.ts";

testRule(propertyPresent, {
  fires: [{ name: "no title", file: AT.stage, change: [['"expected": [\n    {\n      "title": "B+",\n', '"expected": [\n    «{»\n']] }],
  passes: [
    {
      name: "a misspelt one, which another rule tells",
      file: AT.stage,
      change: [['"expected": [\n    {\n      "title"', '"expected": [\n    {\n      "titel"']],
    },
  ],
});
