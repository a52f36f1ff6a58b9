import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { cautionKnown } from "./caution-known.ts";

testRule(cautionKnown, {
  fires: [{ name: "none of that name", file: AT.stage, change: [['"stored-charge"', '«"stored-charges"»']], nearest: "stored-charge" }],
  passes: [{ name: "a caution whose file is broken lies there all the same", file: AT.caution, change: [['"id"', '"id']] }],
});
