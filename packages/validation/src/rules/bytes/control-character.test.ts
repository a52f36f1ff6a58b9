import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { controlCharacter } from "./control-character.ts";

testRule(controlCharacter, {
  fires: [{ name: "an escape", file: AT.bands, change: [["black,0,,", "black,0,«\u0007»,"]] }],
  passes: [{ name: "a tab in CSV is another matter", file: AT.bands, change: [["black,0,,", "black,0,a note,"]] }],
});
