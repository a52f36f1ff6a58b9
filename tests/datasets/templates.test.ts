/** Every stage template on its own, with its typical surroundings: it simulates, and reads what the template says it reads. */
import { evaluateFormula, parseFormula } from "@underchassis/calc/expression";
import type { StageTemplate } from "@underchassis/dataset";
import { loadDataset } from "@underchassis/dataset/load";
import { buildModel } from "@underchassis/grading";
import { describe, expect, it } from "vitest";
import { stageValues } from "../../packages/grading/src/checks/shared/stageValues.ts";
import { templateRequirements } from "../../packages/grading/src/checks/templates/template-requirements.ts";
import { templateJob } from "../../packages/grading/src/circuit/templateJob.ts";
import type { ChassisModel, Condition } from "../../packages/grading/src/model/index.ts";

const dataset = loadDataset();
const templates = [...dataset.stages.values()];

/**
 * How far a textbook formula may be from the simulation, as a ratio. The formulas for direct voltage leave out source resistance and
 * the length of the charging pulse; for ripple, I / (2 f C) takes the pulse as infinitely short, which errs high by up to three quarters
 * with a stiff load on a soft winding. common-practice.
 */
const MEAN_RATIO = 1.15;
const RIPPLE_RATIO = 1.75;

function modelOf(template: StageTemplate, optional: boolean, all = dataset): ChassisModel {
  const text = JSON.stringify(templateJob(template, optional), null, 1);
  const built = buildModel({ job: { name: `${template.id}.json`, text } }, all);
  if (!built.ok) throw new Error(built.diagnostics.map(({ message, received }) => `${message} (${received})`).join("\n"));
  return built.model;
}

interface Outcome {
  where: string;
  simulated: number;
  low: number;
  high: number;
  ratio: number | undefined;
  quantity: string;
}

/** What each expected figure comes to at the design line, beside its window and the textbook's formula. */
function outcomes(model: ChassisModel): Outcome[] {
  const stage = model.stages[0]!;
  return stage.template.expected.map((expected): Outcome => {
    const condition = model.conditions.get(expected.condition) as Condition;
    const at = expected.part === undefined ? stage.points[expected.at ?? ""] : stage.parts[expected.part];
    const to = expected.to === undefined ? model.reference : (stage.points[expected.to] ?? expected.to);
    const situation = { life: "designed", condition: condition.id, line: "design" } as const;
    const prediction = model.predict(situation, { quantity: expected.quantity, at: at ?? "", to });
    const simulated = prediction?.nominal ?? Number.NaN;
    const values = stageValues(model, stage, "designed", condition, "design");
    const formula = expected.formula === undefined ? undefined : evaluateFormula(parseFormula(expected.formula), values);
    return {
      where: `${expected.at ?? expected.part} ${expected.quantity} ${condition.id}`,
      simulated,
      low: expected.low ?? Number.NEGATIVE_INFINITY,
      high: expected.high ?? Number.POSITIVE_INFINITY,
      ratio: formula === undefined ? undefined : Number(formula.value) / simulated,
      quantity: expected.quantity,
    };
  });
}

const outside = (list: readonly Outcome[]): Outcome[] =>
  list.filter(({ simulated, low, high }) => !(simulated >= low && simulated <= high));

describe.each(templates.map((template) => [template.id, template] as const))("%s", (_id, template) => {
  it("simulates in every powered condition, with and without its optional parts", () => {
    for (const optional of [false, true]) {
      const model = modelOf(template, optional);
      for (const { id, powered } of model.conditions.values()) {
        if (!powered) continue;
        const solved = model.solve({ life: "restored", condition: id, line: "high" });
        expect(solved.ok ? "solved" : solved.message, id).toBe("solved");
      }
    }
  });

  it("has its optional parts when they are named, and not otherwise", () => {
    const [without, having] = [modelOf(template, false).stages[0]!, modelOf(template, true).stages[0]!];
    const roles = (wanted: boolean) => template.parts.filter(({ optional }) => (optional ?? false) === wanted).map(({ role }) => role);
    expect(Object.keys(having.parts).sort()).toEqual([...roles(true), ...roles(false)].sort());
    expect(Object.keys(without.parts).sort()).toEqual(roles(false).sort());
  });

  it("reads within its windows at the design line", () => {
    const list = outcomes(modelOf(template, false));
    expect(list.length).toBeGreaterThan(0);
    expect(outside(list)).toEqual([]);
  });

  it("follows the textbook's formulas as far as they go", () => {
    const strays = outcomes(modelOf(template, false)).filter(({ ratio, quantity }) => {
      const most = quantity === "ripple-volts" ? RIPPLE_RATIO : MEAN_RATIO;
      return ratio !== undefined && !(ratio < most && ratio > 1 / most);
    });
    expect(strays).toEqual([]);
  });

  it("keeps its own requirements, and every one can be judged", () => {
    for (const optional of [false, true]) {
      const findings = templateRequirements.run(modelOf(template, optional)).filter(({ severity }) => severity !== "good");
      expect(findings.map(({ title, found }) => `${title}: ${found}`)).toEqual([]);
    }
  });
});

/** How the name of a setting ends, by its unit: `unitOf` reads the dimension of a formula off the names in it. */
const ENDINGS: Readonly<Record<string, RegExp>> = {
  V: /Volts$/,
  A: /Amps$/,
  ohm: /Ohms$/,
  F: /Farads$/,
  H: /Henries$/,
  W: /Watts$/,
  Hz: /Hertz$/,
  s: /Seconds$/,
  S: /Siemens$/,
};

describe("the settings", () => {
  const all = templates.flatMap((template) =>
    Object.entries(template.settings ?? {}).map(([name, setting]) => ({ template, name, setting })),
  );

  it("end in their unit, and ratios in none", () => {
    const wrong = all.filter(({ name, setting: { unit } }) =>
      unit === "ratio" ? Object.values(ENDINGS).some((ending) => ending.test(name)) : ENDINGS[unit]?.test(name) !== true,
    );
    expect(wrong.map(({ template, name }) => `${template.id}: ${name}`)).toEqual([]);
  });

  it("share no name with a part or with what every formula knows", () => {
    const shared = all.filter(({ template, name }) => ["lineVolts", "lineHertz", ...template.parts.map(({ role }) => role)].includes(name));
    expect(shared.map(({ template, name }) => `${template.id}: ${name}`)).toEqual([]);
  });

  it("stand beside a load for every tube that is driven", () => {
    const without = templates.filter(
      ({ parts }) => parts.some(({ driven }) => driven === true) && !parts.some(({ kind }) => kind === "load"),
    );
    expect(without.map(({ id }) => id)).toEqual([]);
  });
});

describe("the windows", () => {
  /** A copy of a template with one part's typical value changed, in a dataset of its own. */
  function altered(id: string, role: string, typical: string): ChassisModel {
    const template = dataset.stages.get(id)!;
    const parts = template.parts.map((part) => (part.role === role ? { ...part, typical } : part)) as StageTemplate["parts"];
    const copy = { ...template, parts };
    return modelOf(copy, false, { ...dataset, stages: new Map([[id, copy]]) });
  }

  it.each([
    ["supply-full-wave-capacitor", "reservoir", "2 uF 450 V"],
    ["supply-full-wave-choke", "inputChoke", "0.5 H 150 ohm 200 mA"],
    ["supply-bridge", "filterResistor", "1 kohm 5 W"],
    ["supply-half-wave", "reservoir", "4 uF 250 V"],
    ["output-single-ended", "cathodeResistor", "1 kohm 2 W"],
    ["bias-supply", "lower", "10 kohm 1 W"],
    ["cathode-follower", "loadResistor", "4.7 kohm 2 W"],
    ["phase-splitter-cathodyne", "biasResistor", "270 ohm 0.5 W"],
    ["phase-splitter-long-tail", "tailResistor", "47 kohm 1 W"],
    ["output-push-pull-cathode-bias", "cathodeResistor", "120 ohm 5 W"],
    ["output-push-pull-fixed-bias", "senseA", "22 ohm 1 W"],
    ["modulator-heising", "droppingResistor", "500 ohm 10 W"],
    ["heater-hum-balance", "dividerLower", "330 kohm 0.5 W"],
    ["vtvm-bridge", "dividerLower", "10 Mohm 1 % 0.5 W"],
    ["oscilloscope-high-voltage", "chainUpperA", "5 Mohm 1 W"],
    ["instrument-attenuator", "shuntA", "12 ohm 0.5 W"],
    ["if-stage", "cathodeResistor", "330 ohm 0.5 W"],
    ["noise-limiter-series", "loadUpper", "1 Mohm 0.5 W"],
    ["screen-clamp", "screenResistor", "100 kohm 10 W"],
    ["keying-grid-block", "keyResistor", "47 kohm 0.5 W"],
    ["metering-shunt-multiplier", "shunt", "1 ohm 1 W"],
  ])("of %s notice %s of %s", (id, role, typical) => {
    expect(outside(outcomes(altered(id, role, typical))).length).toBeGreaterThan(0);
  });
});
