import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { fileSize } from "./file-size.ts";

testRule(fileSize, {
  fires: [
    { name: "nothing in it", file: AT.tube, text: "\n", whole: true },
    { name: "too much in it", file: AT.tube, text: `"${"x".repeat(2_000_000)}"`, whole: true },
  ],
  passes: [{ name: "nearly too much", file: AT.tube, text: `"${"x".repeat(1_999_990)}"` }],
});
