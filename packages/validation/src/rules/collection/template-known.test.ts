import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { templateKnown } from "./template-known.ts";

testRule(templateKnown, {
  fires: [
    {
      name: "a misspelt one of a rule of thumb",
      file: AT.thumb,
      change: [['{ "roles": ["bleeder"] }', '{ "templates": [«"smal-supply"»] }']],
      nearest: "small-supply",
    },
    {
      name: "a misspelt one of a caution",
      file: AT.caution,
      change: [['"sources": [', '"appliesTo": [{ "templates": ["small-supply"] }, { "templates": [«"small-suply"»] }],\n  "sources": [']],
      nearest: "small-supply",
    },
    {
      name: "an example of none",
      file: "datasets/examples/smal-supply/expected.json",
      text: '{ "nominal": { "clearance": "service", "worst": "good" }, "fault": { "finds": [] } }\n',
      nearest: "small-supply",
      whole: true,
    },
  ],
  passes: [
    { name: "one that is there", file: AT.thumb, change: [['{ "roles": ["bleeder"] }', '{ "templates": ["small-supply"] }']] },
    { name: "one that is broken lies there all the same", file: AT.stage, change: [['"sources": [', '"sources": [[']], others: {} },
  ],
});
