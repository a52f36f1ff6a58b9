import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { byteOrderMark } from "./byte-order-mark.ts";

testRule(byteOrderMark, {
  fires: [{ name: "a mark", file: AT.tube, change: [['{\n  "$schema"', '\ufeff«»{\n  "$schema"']] }],
  passes: [{ name: "none", file: AT.tube, change: [["Full", "full"]] }],
});
