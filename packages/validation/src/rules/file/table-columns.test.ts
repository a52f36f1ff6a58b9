import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { tableColumns } from "./table-columns.ts";

testRule(tableColumns, {
  fires: [
    { name: "a misspelt column", file: AT.bands, change: [["colour,figure", "colour,«figures»"]], nearest: "figure" },
    { name: "a missing column", file: AT.bands, text: "«colour»,figure,source\nblack,0,from-memory\n" },
    { name: "semicolons", file: AT.bands, text: "«colour;figure;note;source»\nblack;0;;from-memory\n", says: "semicolons" },
    { name: "columns exchanged", file: AT.bands, text: "«figure»,colour,note,source\n0,black,,from-memory\n" },
  ],
  passes: [{ name: "as described", file: AT.bands, change: [["black,0", "black,3"]] }],
});
