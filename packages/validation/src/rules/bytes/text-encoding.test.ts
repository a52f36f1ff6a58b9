import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { textEncoding } from "./text-encoding.ts";

testRule(textEncoding, {
  fires: [
    { name: "a byte that is no UTF-8", file: AT.manifest, text: new Uint8Array([123, 10, 255, 10]), at: [2, 1, 2, 2], says: "not UTF-8" },
  ],
  passes: [{ name: "two-byte letters", file: AT.tube, change: [["Full-wave", "Füll-wave"]] }],
});
