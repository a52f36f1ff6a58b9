import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { settingUnit } from "./setting-unit.ts";

const setting = (name: string, unit: string, typical: string) =>
  [
    '"parts": [',
    `"settings": { ${name}: { "meaning": "Load.", "unit": "${unit}", "typical": "${typical}", "source": "common-practice" } },\n  "parts": [`,
  ] as const;

testRule(settingUnit, {
  fires: [
    { name: "volts under the name of ohms", file: AT.stage, change: [setting('«"loadOhms"»', "V", "4 V")], says: "the name says ohm" },
    { name: "ohms without a word of it", file: AT.stage, change: [setting('«"load"»', "ohm", "4 kohm")], says: "does not say so" },
    { name: "a ratio under the name of volts", file: AT.stage, change: [setting('«"lineVolts"»', "ratio", "1.1")] },
  ],
  passes: [
    { name: "ohms", file: AT.stage, change: [setting('"loadOhms"', "ohm", "4 kohm")] },
    { name: "a ratio", file: AT.stage, change: [setting('"swr"', "ratio", "2")] },
    { name: "a template without settings", file: AT.stage },
  ],
});
