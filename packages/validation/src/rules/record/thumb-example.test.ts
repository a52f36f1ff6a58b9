import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { thumbExample } from "./thumb-example.ts";

testRule(thumbExample, {
  fires: [
    { name: "another result", file: AT.thumb, change: [['"result": 0.01', '"result": «0.1»']] },
    { name: "a last digit that is off by one", file: AT.thumb, change: [['"result": 0.01', '"result": «0.0101»']] },
    { name: "a name without a value", file: AT.thumb, change: [['"values": { "loadAmps": 0.1 }', '«"values"»: { "amps": 0.1 }']] },
  ],
  passes: [{ name: "rounded", file: AT.thumb, change: [['"loadAmps": 0.1 }, "result": 0.01', '"loadAmps": 0.1049 }, "result": 0.01']] }],
});
