import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { characterEscape } from "./character-escape.ts";

const before = (piece: string) => [["Measure before", `${piece}Measure before`]] as const;

testRule(characterEscape, {
  fires: [
    { name: "a control character", file: AT.caution, change: before("«\\u001b»[31m"), says: "U+001B" },
    { name: "a line end", file: AT.caution, change: before("«\\n»"), says: "a line end" },
    { name: "a change of direction", file: AT.caution, change: before("«\\u202E»"), says: "U+202E" },
    { name: "a letter of another script in an id", file: AT.caution, change: [["stored-charge", "st«\\u043e»red-charge"]] },
    { name: "a character of two units", file: AT.caution, change: before("«\\ud83d\\ude00»"), says: "U+1F600" },
    { name: "half a character", file: AT.caution, change: before("«\\ud83d»"), says: "U+D83D" },
    { name: "a letter that can be written", file: AT.caution, change: before("«\\u003c»b>"), nearest: "<" },
    { name: "a property's name", file: AT.caution, change: [['"title"', '"t«\\u0069»tle"']], nearest: "i" },
  ],
  passes: [
    { name: "quote marks", file: AT.caution, change: before('\\"C1\\" ') },
    { name: "a backslash before letters", file: AT.caution, change: before("a \\\\u0041 b \\\\n ") },
    { name: "a table, which has none", file: AT.bands, change: [["black,0,,", "black,0,\\n,"]] },
  ],
});
