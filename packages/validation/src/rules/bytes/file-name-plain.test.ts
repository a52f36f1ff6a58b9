import { testRule } from "../../testing/ruleCase.ts";

import { fileNamePlain } from "./file-name-plain.ts";

testRule(fileNamePlain, {
  fires: [
    { name: "capitals", file: "datasets/tubes/6X5.json", text: "{}", says: "6X5.json", whole: true },
    { name: "a way out of the folder", file: "datasets/tubes/../../6x5.json", text: "{}", whole: true },
  ],
  passes: [{ name: "digits and hyphens", file: "datasets/tubes/6x5-gt.json", text: "{}" }],
});
