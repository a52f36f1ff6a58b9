import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { hiddenCharacter } from "./hidden-character.ts";

testRule(hiddenCharacter, {
  fires: [
    { name: "a right-to-left override", file: AT.tube, change: [["Full-wave", "«\u202e»Full-wave"]], says: "U+202E" },
    { name: "a zero-width space", file: AT.bands, change: [["black,0,,", "black,0,x«\u200b»y,"]] },
  ],
  passes: [{ name: "a visible letter", file: AT.bands, change: [["black,0,,", "black,0,xy,"]] }],
});
