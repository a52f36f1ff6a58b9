import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { tubeParameters } from "./tube-parameters.ts";

const UNIT = '{ "kind": "vacuum-diode", "count": 2, "parameters": { "perveance": 0.0006784 }, "source"';
const triode = (parameters: string, kind = '"triode"') => [UNIT, `{ "kind": ${kind}, "parameters": { ${parameters} }, "source"`] as const;
const WHOLE = '"mu": 100, "ex": 1.4, "kg1": 1060, "kp": 600, "kvb": 300';

testRule(tubeParameters, {
  fires: [
    { name: "a misspelt parameter", file: AT.tube, change: [['"perveance"', '«"pervience"»']], nearest: "perveance" },
    { name: "one that lacks", file: AT.tube, change: [triode(WHOLE.replace('"kg1": 1060, ', ""), '«"triode"»')], says: "kg1" },
    { name: "a parameter of another model", file: AT.tube, change: [triode(`${WHOLE}, «"kg2"»: 4500`)] },
    { name: "one below zero", file: AT.tube, change: [triode(WHOLE.replace("600", "«-600»"))] },
    { name: "no parameters at all", file: AT.tube, change: [[UNIT, '{ "kind": «"vacuum-diode"», "count": 2, "source"']] },
  ],
  passes: [
    { name: "a triode with a contact potential", file: AT.tube, change: [triode(`${WHOLE}, "vct": -0.4`)] },
    { name: "a unit that is not simulated", file: AT.tube, change: [[UNIT, '{ "kind": "none", "source"']] },
  ],
});
