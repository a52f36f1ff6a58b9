import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { csvRows } from "./csv-rows.ts";

testRule(csvRows, {
  fires: [
    { name: "a cell too few", file: AT.bands, change: [["brown,1,,from-memory", "«brown,1,from-memory»"]], says: "too few" },
    { name: "a cell too many", file: AT.bands, change: [["brown,1,,from-memory", "«brown,1,a,b,from-memory»"]], says: "too many" },
    { name: "a cell without end", file: AT.bands, change: [["brown,1,,", `brown,1,«${"x".repeat(501)}»,`]], says: "too long" },
    {
      name: "rows without end",
      file: AT.bands,
      text: `colour,figure,note,source\n${"black,0,,from-memory\n".repeat(5000)}«b»lack,0,,from-memory\n`,
      says: "more rows",
    },
    { name: "a mark of a merge", file: AT.bands, change: [["brown,1", "«<<<<<<< ours»\nbrown,1"]], says: "merge" },
    { name: "a blank row", file: AT.bands, change: [["brown,1", "«»\nbrown,1"]] },
    { name: "a line end in a cell", file: AT.bands, change: [["brown,1,,from-memory", '«brown,1,"a»\nb",from-memory']] },
  ],
  passes: [{ name: "a comma in quotes", file: AT.bands, change: [["brown,1,,", 'brown,1,"a, b",']] }],
});
