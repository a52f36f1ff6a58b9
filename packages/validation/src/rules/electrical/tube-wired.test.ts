import { grader } from "../../run/validateAll.ts";
import { testRule } from "../../testing/ruleCase.ts";
import { AT, SOUND_FILES } from "../../testing/soundFiles.ts";
import { tubeWired } from "./tube-wired.ts";

const UNIT = '{ "kind": "vacuum-diode", "count": 2, "parameters": { "perveance": 0.0006784 }, "source"';
const TRIODE = '"mu": 20, "ex": 1.4, "kg1": 1180, "kp": 84, "kvb": 300';
/** The sound tube, another kind of tube in its place. */
const tubeOf = (kind: string, parameters: string) => ({
  [AT.tube]: SOUND_FILES[AT.tube]
    .replace('"class": "rectifier"', `"class": "${kind}"`)
    .replace(UNIT, `{ "kind": "${kind}", "parameters": { ${parameters} }, "source"`),
});
/** The sound template with a tube that draws on its B+. */
const wired = (pins: string, type: string) =>
  [
    '"parts": [\n    {\n      "role": "rect',
    `"parts": [\n    {\n      "role": "tube",\n      "title": "Tube",\n      "kind": "tube",\n      "pins": { ${pins} },\n      "type": ${type},\n      "source": "common-practice"\n    },\n    {\n      "role": "rect`,
  ] as const;
const PINS = '"plate": "b-plus", "grid": "return", "cathode": "return"';
const options = { electrical: true } as const;

testRule(
  tubeWired,
  {
    fires: [
      {
        name: "a pentode whose screen lies nowhere",
        file: AT.stage,
        change: [wired(PINS, '«"6X4"»')],
        others: tubeOf("pentode", `${TRIODE}, "kg2": 4500`),
        says: "wires none",
        options,
      },
      {
        name: "a triode with a screen",
        file: AT.stage,
        change: [wired(`${PINS}, «"screen"»: "b-plus"`, '"6X4"')],
        others: tubeOf("triode", TRIODE),
        says: "has no screen",
        options,
      },
    ],
    passes: [
      { name: "a triode", file: AT.stage, change: [wired(PINS, '"6X4"')], others: tubeOf("triode", TRIODE), options },
      {
        name: "a pentode connected as a triode",
        file: AT.stage,
        change: [wired(`${PINS}, "screen": "b-plus"`, '"6X4"')],
        others: tubeOf("pentode", `${TRIODE}, "kg2": 4500`),
        options,
      },
    ],
  },
  grader,
);
