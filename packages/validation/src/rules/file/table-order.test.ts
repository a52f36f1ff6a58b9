import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { tableOrder } from "./table-order.ts";

testRule(tableOrder, {
  fires: [
    {
      name: "choices that fall",
      file: AT.bands,
      text: "colour,figure,note,source\nbrown,1,,from-memory\n«black»,0,,from-memory\nred,2,,from-memory\n",
    },
  ],
  passes: [
    {
      name: "texts in any order",
      file: AT.diodes,
      text: "class,pivVolts,averageAmps,source\n1N4007,1000,1,from-memory\n1N4004,400,1,from-memory\n",
    },
  ],
});
