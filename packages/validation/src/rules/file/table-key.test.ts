import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { tableKey } from "./table-key.ts";

testRule(tableKey, {
  fires: [{ name: "the same key", file: AT.diodes, change: [["1N4007,1000", "«1N4004»,1000"]], says: "line 2" }],
  passes: [{ name: "keys that are near", file: AT.diodes, change: [["1N4004", "1N4005"]] }],
});
