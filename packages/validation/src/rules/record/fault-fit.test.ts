import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { faultFit } from "./fault-fit.ts";

const fault = (written: string) => ['"sources": [', `"fault": ${written},\n  "sources": [`] as const;

testRule(faultFit, {
  fires: [
    { name: "a capacitor with shorted turns", file: AT.note, change: [fault('{ "kind": «"shorted-turns"», "weight": 5 }')] },
    {
      name: "a kind named besides that cannot have it",
      file: AT.note,
      change: [fault('{ "kind": "lost-capacity", "weight": 5, "partKinds": ["capacitor", «"resistor"»] }')],
    },
  ],
  passes: [
    { name: "a note without a fault", file: AT.note },
    { name: "a capacitor that dries out", file: AT.note, change: [fault('{ "kind": "lost-capacity", "weight": 5 }')] },
    { name: "a bridge", file: AT.note, change: [fault('{ "kind": "bridge", "weight": 5 }')] },
    {
      name: "a wiring error",
      file: AT.note,
      change: [['"partKind": "capacitor"', '"partKind": "wiring"'], fault('{ "kind": "moved-lead", "weight": 5 }')],
    },
  ],
});
