import type { StageTemplate } from "@underchassis/dataset";

const RECORD = {
  schemaVersion: 1,
  family: "supply",
  summary: "A stage made up for tests of the reader.",
  expected: [],
  requirements: [],
  cautions: ["test"],
  sources: ["common-practice"],
} as const;

/** A filter of a reservoir, a choke and an output capacitor, with an optional bleeder. */
const SUPPLY: StageTemplate = {
  ...RECORD,
  expected: [],
  requirements: [],
  cautions: ["test"],
  sources: ["common-practice"],
  id: "test-supply",
  title: "Supply for tests",
  terminals: [
    { id: "raw", meaning: "rectified input" },
    { id: "b-plus", meaning: "filtered output" },
    { id: "common", meaning: "negative side", default: "chassis" },
    { id: "heater-a", meaning: "one side of the heater winding", optional: true },
  ],
  points: { mid: "between the choke's halves" },
  parts: [
    {
      role: "reservoir",
      title: "input (reservoir) filter capacitor",
      kind: "capacitor",
      between: ["raw", "common"],
      typical: "20 uF 450 V",
    },
    { role: "chokeIn", title: "filter choke", kind: "inductor", between: ["raw", "mid"], typical: "8 H" },
    { role: "chokeOut", title: "second choke", kind: "inductor", between: ["mid", "b-plus"], typical: "8 H" },
    { role: "outputCapacitor", title: "output filter capacitor", kind: "capacitor", between: ["b-plus", "common"], typical: "20 uF 450 V" },
    { role: "bleeder", title: "bleeder", kind: "resistor", between: ["b-plus", "common"], optional: true, typical: "100 k" },
    {
      role: "heaterWinding",
      title: "heater winding",
      kind: "transformer",
      optional: true,
      windings: { heater: { between: ["heater-a", "common"], typical: "6.3 V 3 A", optional: true } },
    },
  ],
};

/** A triode with its plate load and cathode resistor. */
const AMPLIFIER: StageTemplate = {
  ...RECORD,
  family: "audio",
  expected: [],
  requirements: [],
  cautions: ["test"],
  sources: ["common-practice"],
  id: "test-amplifier",
  title: "Amplifier for tests",
  terminals: [
    { id: "b-plus", meaning: "supply" },
    { id: "plate", meaning: "output" },
    { id: "common", meaning: "negative side", default: "chassis" },
  ],
  points: { cathode: "cathode of the tube" },
  parts: [
    { role: "tube", title: "triode", kind: "tube", pins: { plate: "plate", cathode: "cathode", grid: "common" }, type: "6J5" },
    { role: "plateLoad", title: "plate load resistor", kind: "resistor", between: ["b-plus", "plate"], typical: "47 k" },
    { role: "cathodeResistor", title: "cathode resistor", kind: "resistor", between: ["cathode", "common"], typical: "1.5 k" },
  ],
};

/** Two stage templates that no chassis has, so that tests of the reader do not hang on the shared datasets. */
export const TEST_DATASET: { stages: ReadonlyMap<string, StageTemplate> } = {
  stages: new Map([SUPPLY, AMPLIFIER].map((template) => [template.id, template])),
};

/** A job in order, as text. Line numbers of tests count from its first brace. */
export const SOUND_JOB = `{
  "format": 1,
  "title": "test receiver",
  "chassis": { "line": { "designVolts": "117 V", "hertz": 60 } },
  "stages": [
    {
      "id": "supply",
      "template": "test-supply",
      "bind": { "raw": "rectifier cathode", "b-plus": "B+" },
      "parts": {
        "reservoir": { "name": "C1", "marked": "20 mfd 450V", "measured": { "value": "17 uF", "meter": "bench" }, "fitted": "22 uF 450 V" }
      }
    },
    {
      "id": "audio",
      "template": "test-amplifier",
      "bind": { "b-plus": "B+", "plate": "V1 plate" },
      "parts": { "tube": { "name": "V1", "type": "6J5" } }
    }
  ],
  "parts": [
    { "name": "S1", "kind": "switch", "between": ["B+", "screen bus"], "positions": { "standby": "open" } },
    { "name": "R9", "kind": "resistor", "marked": "yellow violet orange silver", "between": ["screen bus", "chassis"] },
    { "name": "L1", "kind": "load", "between": ["screen bus", "chassis"], "marked": "20 mA" }
  ],
  "conditions": { "receive": { "like": "operating", "tubes": ["V1"], "switches": { "S1": "closed" }, "loads": { "L1": "25 mA" } } },
  "meters": { "bench": { "input": "10 Mohm" } },
  "readings": [
    { "at": "B+", "quantity": "dc-volts", "value": "285 V", "meter": "bench" },
    { "at": "supply:mid", "quantity": "ripple-volts", "value": "3 V", "condition": "receive" },
    { "at": "audio.plateLoad", "quantity": "dc-amps", "value": "3 mA" }
  ]
}
`;
