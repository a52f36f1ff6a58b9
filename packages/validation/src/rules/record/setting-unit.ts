import type { StageTemplate } from "@underchassis/dataset";
import type { Complaint, RecordRule } from "../../model/rule.ts";

/** How a name ends that says its unit. */
const ENDINGS: Readonly<Record<string, string>> = {
  Volts: "V",
  Amps: "A",
  Ohms: "ohm",
  Watts: "W",
  Hertz: "Hz",
  Farads: "F",
  Henries: "H",
  Seconds: "s",
};

/** A setting's name ends in its unit. */
export const settingUnit: RecordRule = {
  code: "UC-428",
  name: "setting-unit",
  scope: "record",
  severity: "error",
  title: "A setting's name ends in its unit: loadOhms in ohm; a ratio's name ends in none",
  why: "Formulas call a setting by its name alone, and are checked for dimension by how it ends.",
  bad: '"loadOhms": { "unit": "V" }',
  good: '"loadOhms": { "unit": "ohm" }',
  kinds: ["stage"],
  check(record) {
    const { settings } = record.value as StageTemplate;
    if (settings === undefined) return [];
    const complaints: Complaint[] = [];
    for (const [name, { unit }] of Object.entries(settings)) {
      const ending = Object.keys(ENDINGS).find((word) => name.endsWith(word) || name === word.toLowerCase());
      const said = ending === undefined ? "ratio" : ENDINGS[ending];
      if (said === unit) continue;
      const right = Object.keys(ENDINGS).find((word) => ENDINGS[word] === unit);
      complaints.push({
        at: { path: ["settings", name], part: "key" },
        message: ending === undefined ? `the name of a setting in ${unit} does not say so` : `the name says ${said}, the unit is ${unit}`,
        received: name,
        expected: right === undefined ? "a name that ends in no unit" : `a name that ends in ${right}`,
      });
    }
    return complaints;
  },
};
