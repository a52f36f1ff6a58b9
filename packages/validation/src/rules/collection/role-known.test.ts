import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { roleKnown } from "./role-known.ts";

testRule(roleKnown, {
  fires: [
    { name: "a misspelt role", file: AT.note, change: [['"reservoir"', '«"reservior"»']], nearest: "reservoir" },
    { name: "of a rule of thumb", file: AT.thumb, change: [['["bleeder"]', '[«"bleder"»]']], nearest: "bleeder" },
  ],
  passes: [{ name: "another role", file: AT.note, change: [['"reservoir"', '"outputCapacitor"']] }],
});
