import { grader } from "../../run/validateAll.ts";
import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { tubeModel } from "./tube-model.ts";

const options = { electrical: true } as const;
const typical = (point: string) => ['"typical": []', `"typical": [{ "service": "class A", ${point}, "source": "from-memory" }]`] as const;
/** The unit of the sound tube, another kind of model in its place. */
const unit = (kind: string, parameters: string, more = "", mark = '"parameters"') =>
  [
    '{ "kind": "vacuum-diode", "count": 2, "parameters": { "perveance": 0.0006784 }, "source"',
    `{ "kind": "${kind}", ${mark}: { ${parameters} },${more} "source"`,
  ] as const;

/** A triode that passes 1 A at 100 V, no grid volts and an endless kp: ((100 / mu)^1.5 * 2) / kg1, and so 2 * 10^1.5 / 63.2. */
const TRIODE = '"mu": 10, "ex": 1.5, "kg1": 63.2, "kp": 500, "kvb": 0.001';
const POINT = '"plateVolts": 100, "gridVolts": 0, "plateAmps":';

testRule(
  tubeModel,
  {
    fires: [
      {
        name: "a perveance that is ten times too large",
        file: AT.tube,
        // 22 V at 70 mA: 0.07 / 22^1.5 is 0.000678; ten times as much gives 22 V over 10^(2/3).
        change: [
          typical('"dropVolts": 22, "dropAmps": 0.07'),
          ['"parameters": { "perveance": 0.0006784 }', '«"parameters"»: { "perveance": 0.006784 }'],
        ],
        says: "4.74 V at published point 1, not 22 V",
        options,
      },
      {
        name: "a gas tube that drops too much",
        file: AT.tube,
        change: [typical('"dropVolts": 15, "dropAmps": 0.25'), unit("gas-diode", '"dropVolts": 24, "ohms": 4', "", '«"parameters"»')],
        options,
      },
      {
        name: "a triode that gives twice the current",
        file: AT.tube,
        change: [typical(`${POINT} 0.5`), unit("triode", TRIODE, "", '«"parameters"»')],
        says: "1 A at published point 1, not 0.5 A",
        options,
      },
      {
        name: "parameters that give no current",
        file: AT.tube,
        change: [typical(`${POINT} 1`), unit("triode", TRIODE.replace('"kg1": 63.2, ', ""), "", '«"parameters"»')],
        says: "cannot be reckoned",
        options,
      },
      {
        name: "a distance that is not the true one",
        file: AT.tube,
        change: [typical(`${POINT} 1.05`), unit("triode", TRIODE, ' "distance": [{ "point": 1, "plateAmps": 0.02 }],', '«"parameters"»')],
        options,
      },
    ],
    passes: [
      { name: "the three-halves-power law", file: AT.tube, change: [typical('"dropVolts": 22, "dropAmps": 0.07')], options },
      {
        name: "a regulator at its working current",
        file: AT.tube,
        change: [typical('"dropVolts": 151, "dropAmps": 0.0175'), unit("gas-regulator", '"operatingVolts": 149.6, "slopeOhms": 80')],
        options,
      },
      { name: "a triode within 10 %", file: AT.tube, change: [typical(`${POINT} 1.05`), unit("triode", TRIODE)], options },
      {
        name: "a distance that is the true one",
        file: AT.tube,
        change: [typical(`${POINT} 0.5`), unit("triode", TRIODE, ' "distance": [{ "point": 1, "plateAmps": 1.001 }],')],
        options,
      },
    ],
  },
  grader,
);
