import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { failureNoteKnown } from "./failure-note-known.ts";

testRule(failureNoteKnown, {
  fires: [{ name: "none of that name", file: AT.stage, change: [['"filter-dry"', '«"filter-wet"»']] }],
  passes: [{ name: "one that there is", file: AT.note, change: [["Hum.", "Loud hum."]] }],
});
