import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { tableList } from "./table-list.ts";

testRule(tableList, {
  fires: [
    { name: "no such table", file: AT.tables, change: [['"file": "bands.csv"', '"file": «"band.csv"»']], nearest: "bands.csv" },
    { name: "a key that is no column", file: AT.tables, change: [['"key": ["colour"]', '"key": [«"color"»]']], nearest: "colour" },
    { name: "a list that is not there", file: AT.tables, change: [['"among": "colours"', '"among": «"colors"»']], nearest: "colours" },
  ],
  passes: [{ name: "a longer key", file: AT.tables, change: [['"key": ["colour"]', '"key": ["colour", "figure"]']] }],
});
