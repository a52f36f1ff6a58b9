import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { tableCells } from "./table-cells.ts";

testRule(tableCells, {
  fires: [
    { name: "a comma for a point", file: AT.diodes, change: [["400,1,", '400,«"1,5"»,']], nearest: "1.5" },
    { name: "less than nothing", file: AT.diodes, change: [["400,1,", "400,«-1»,"]], says: "below zero" },
    { name: "no whole number", file: AT.diodes, change: [["400,", "«400.5»,"]] },
    { name: "an empty cell", file: AT.bands, change: [["black,0", "black,«»"]] },
    { name: "no choice", file: AT.bands, change: [["brown", "«bronw»"]], nearest: "brown" },
  ],
  passes: [
    { name: "an optional cell", file: AT.bands, change: [["black,0,,", "black,0,x,"]] },
    { name: "an exponent", file: AT.diodes, change: [["400,1,", "400,1e-06,"]] },
  ],
});
