import type { StageTemplate } from "@underchassis/dataset";
import type { RecordRule } from "../../model/rule.ts";
import { formulasIn } from "../../shared/formulasIn.ts";

/** Every setting is called by some formula. */
export const settingUsed: RecordRule = {
  code: "UC-423",
  name: "setting-used",
  scope: "record",
  severity: "warning",
  title: "Every setting of a template is called by one of its formulas",
  why: "A job may give a setting a value of its own; one that no formula calls takes the value and changes nothing.",
  bad: '"settings": { "bandLowHertz": ... } with no formula that has bandLowHertz in it',
  good: '"formula": "1 / (2 * pi * sqrt(coil.henries * tuning.farads)) <= bandLowHertz"',
  kinds: ["stage"],
  check(record) {
    const settings = Object.keys((record.value as StageTemplate).settings ?? {});
    if (settings.length === 0) return [];
    const formulas = formulasIn(record);
    // A formula that cannot be read may call any of them.
    if (formulas.some(({ parsed }) => !parsed.ok)) return [];
    const called = new Set(formulas.flatMap(({ parsed }) => (parsed.ok ? parsed.names.map(({ name }) => name) : [])));
    return settings
      .filter((name) => !called.has(name))
      .map((name) => ({
        at: { path: ["settings", name], part: "key" as const },
        message: `no formula calls the setting "${name}"`,
        received: name,
        help: "call it in a requirement or an expected figure, or take it out",
      }));
  },
};
