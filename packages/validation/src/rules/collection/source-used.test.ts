import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { sourceUsed } from "./source-used.ts";

testRule(sourceUsed, {
  fires: [
    {
      name: "a source that nothing names",
      file: AT.sources,
      change: [["from-memory,from", "«derived»,derived,Worked out,\nfrom-memory,from"]],
    },
  ],
  passes: [
    {
      name: "a run in which some file cannot be read",
      file: AT.sources,
      change: [["from-memory,from", "derived,derived,Worked out,\nfrom-memory,from"]],
      others: { "datasets/tubes/z4.json": "{" },
    },
  ],
});
