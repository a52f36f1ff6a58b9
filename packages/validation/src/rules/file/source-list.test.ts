import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { sourceList } from "./source-list.ts";

testRule(sourceList, {
  fires: [
    { name: "no such kind", file: AT.sources, change: [["from-memory,from-memory", "from-memory,«memory»"]] },
    {
      name: "out of order",
      file: AT.sources,
      text: "id,kind,title,detail\nfrom-memory,from-memory,Recalled,\n«common-practice»,common-practice,Practice of the trade,\n",
    },
    { name: "other columns", file: AT.sources, change: [["id,kind,title", "id,kind,«name»"]] },
  ],
  passes: [{ name: "one more", file: AT.sources, change: [["from-memory,from", "derived,derived,Worked out,\nfrom-memory,from"]] }],
});
