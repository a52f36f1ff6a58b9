import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { plainText } from "./plain-text.ts";

testRule(plainText, {
  fires: [
    { name: "a tag", file: AT.caution, change: [["Measure before", "«<b>»Measure«</b>» before"]] },
    { name: "an entity", file: AT.caution, change: [["Measure before", "a «&amp;» b. Measure before"]] },
    { name: "a tag behind an escape", file: AT.caution, change: [["Measure before", "«\\u003cb>»Measure before"]] },
    { name: "an end tag with an escaped stroke", file: AT.caution, change: [["Measure before", "Measure«<\\/b>» before"]] },
  ],
  passes: [{ name: "a comparison", file: AT.caution, change: [["Measure before", "Below <1 V and >0 V. Measure before"]] }],
});
