import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { tableDescribed } from "./table-described.ts";

testRule(tableDescribed, {
  fires: [{ name: "a new table", file: "datasets/tables/cords.csv", text: "cord,source\na,from-memory\n", whole: true }],
  passes: [{ name: "a described one", file: AT.bands, change: [["black,0", "black,3"]] }],
});
