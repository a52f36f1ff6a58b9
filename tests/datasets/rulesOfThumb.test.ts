/** The rules of thumb: their formulas compute what their examples say, and all that they name exists. */
import { evaluateFormula, parseFormula } from "@underchassis/calc/expression";
import { loadDataset } from "@underchassis/dataset/load";
import { describe, expect, it } from "vitest";

const dataset = loadDataset();
const rules = [...dataset.rulesOfThumb.values()];
const withFormula = rules.flatMap((rule) => (rule.formula === undefined ? [] : [{ id: rule.id, ...rule.formula }]));

/** Bench figures are given to two or three digits. */
const RELATIVE = 0.01;

describe("rules of thumb", () => {
  it("are at least 40, each with a figure or a formula", () => {
    expect(rules.length).toBeGreaterThanOrEqual(40);
    expect(rules.filter(({ figures, formula }) => (figures ?? []).length === 0 && formula === undefined)).toEqual([]);
    expect(withFormula.length).toBeGreaterThan(10);
  });

  it.each(withFormula)("$id: the formula gives its example", ({ expression, where, example }) => {
    const formula = parseFormula(expression);
    expect(formula.gives).toBe("number");
    expect(formula.names.filter((name) => name !== "pi").toSorted()).toEqual(Object.keys(where).toSorted());
    const values: Readonly<Record<string, number>> = { ...example?.values, pi: Math.PI };
    const { value } = evaluateFormula(formula, { name: (name) => values[name], point: () => undefined });
    expect(Number(value) / (example?.result ?? Number.NaN)).toBeGreaterThan(1 - RELATIVE);
    expect(Number(value) / (example?.result ?? Number.NaN)).toBeLessThan(1 + RELATIVE);
  });

  it("name sources, cautions, templates and roles that exist", () => {
    const roles = new Set([...dataset.stages.values()].flatMap(({ parts }) => parts.map(({ role }) => role)));
    const strays = rules.flatMap(({ id, sources, figures, schools, cautions, appliesTo }) => [
      ...[...sources, ...(figures ?? []).map(({ source }) => source), ...(schools ?? []).map(({ source }) => source)]
        .filter((source) => !dataset.sources.has(source))
        .map((source) => `${id}: source ${source}`),
      ...(cautions ?? []).filter((caution) => !dataset.cautions.has(caution)).map((caution) => `${id}: caution ${caution}`),
      ...(appliesTo.templates ?? []).filter((template) => !dataset.stages.has(template)).map((template) => `${id}: template ${template}`),
      ...(appliesTo.roles ?? []).filter((role) => !roles.has(role)).map((role) => `${id}: role ${role}`),
    ]);
    expect(strays).toEqual([]);
  });

  it("list among their sources the source of every figure and school", () => {
    const strays = rules.flatMap(({ id, sources, figures, schools }) =>
      [...(figures ?? []), ...(schools ?? [])].filter(({ source }) => !sources.includes(source)).map(({ source }) => `${id}: ${source}`),
    );
    expect(strays).toEqual([]);
  });

  it("have windows with the lower end below the upper", () => {
    const upside = rules.flatMap(({ id, figures }) =>
      (figures ?? []).filter(({ low, high }) => low !== undefined && high !== undefined && low >= high).map(() => id),
    );
    expect(upside).toEqual([]);
  });
});
