import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { settingUsed } from "./setting-used.ts";

const setting = (mark: (name: string) => string) =>
  [
    '"parts": [',
    `"settings": {\n    ${mark('"loadOhms"')}: { "meaning": "Load.", "unit": "ohm", "typical": "4 kohm", "source": "common-practice" }\n  },\n  "parts": [`,
  ] as const;
const RATING = "reservoir.ratedVolts >= reservoir.maxVolts";

testRule(settingUsed, {
  fires: [
    { name: "one that no formula calls", file: AT.stage, change: [setting((name) => `\u00ab${name}\u00bb`)] },
    {
      name: "one whose name is only part of another",
      file: AT.stage,
      change: [setting((name) => `\u00ab${name}\u00bb`), [RATING, "filterResistor.ohms < 1000"]],
    },
  ],
  passes: [
    { name: "a template without settings", file: AT.stage },
    {
      name: "one that a requirement calls",
      file: AT.stage,
      change: [setting((name) => name), [RATING, "loadOhms > 10 * filterResistor.ohms"]],
    },
    {
      name: "one that an expected figure calls",
      file: AT.stage,
      change: [
        setting((name) => name),
        ["filterResistor.meanAmps * filterResistor.ohms", 'volts(\\"b-plus\\") / loadOhms * filterResistor.ohms'],
      ],
    },
    {
      name: "one that a formula may call which cannot be read",
      file: AT.stage,
      change: [setting((name) => name), [RATING, "loadOhms > > 1"]],
    },
  ],
});
