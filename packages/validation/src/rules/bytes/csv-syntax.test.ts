import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { csvSyntax } from "./csv-syntax.ts";

testRule(csvSyntax, {
  fires: [
    { name: "a quote mark inside a cell", file: AT.bands, change: [["red,2,,", 'red,2,1/4«"» wire,']] },
    { name: "a quote that stays open", file: AT.bands, change: [["red,2,,", 'red,2,«"»open,']] },
  ],
  passes: [{ name: "doubled quote marks", file: AT.bands, change: [["red,2,,", 'red,2,"1/4"" wire",']] }],
});
