import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { fileName } from "./file-name.ts";

testRule(fileName, {
  fires: [{ name: "another id", file: AT.tube, change: [['"id": "6x4"', '"id": «"6x5"»']] }],
  passes: [{ name: "the same id", file: AT.tube, change: [['"EZ90"', '"EZ91"']] }],
});
