import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { electrodeKnown } from "./electrode-known.ts";

/** The sound template's rectifier, by its pins. */
const pins = (written: string, mark = '"pins"') =>
  ['"between": ["hv", "input"],\n      "type"', `${mark}: { ${written} },\n      "type"`] as const;
const tube = (written: string) =>
  [
    '"kind": "rectifier",\n      "between": ["hv", "input"],\n      "type": "1N4007",',
    `"kind": "tube",\n      "pins": { ${written} },\n      "type": "6X4",`,
  ] as const;

testRule(electrodeKnown, {
  fires: [
    { name: "a misspelt plate", file: AT.stage, change: [pins('«"plat-1"»: "hv", "cathode": "input"')], nearest: "plate" },
    {
      name: "the other word for a plate",
      file: AT.stage,
      change: [tube('«"anode"»: "input", "grid": "hv", "cathode": "return"')],
      nearest: "plate",
    },
    { name: "a misspelt grid", file: AT.stage, change: [tube('"plate": "input", «"grd"»: "hv", "cathode": "return"')], nearest: "grid" },
    { name: "no cathode", file: AT.stage, change: [pins('"plate": "hv"', '«"pins"»')], says: "lacks a pin" },
  ],
  passes: [
    { name: "two plates", file: AT.stage, change: [pins('"plate-1": "hv", "plate-2": "return", "cathode": "input"')] },
    { name: "a part between two points", file: AT.stage },
    { name: "a tuning eye", file: AT.stage, change: [tube('"plate": "input", "grid": "hv", "cathode": "return", "target": "b-plus"')] },
  ],
});
