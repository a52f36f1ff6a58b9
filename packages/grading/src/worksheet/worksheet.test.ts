import { describe, expect, it } from "vitest";
import { referenceDataset } from "../testing/referenceDataset.ts";
import { jobWorksheet, templatesWorksheet } from "./makeWorksheet.ts";
import type { Worksheet } from "./worksheet.ts";

const dataset = referenceDataset();
const template = (id: string) => dataset.stages.get(id)!;

function sheetOf(...ids: string[]): Worksheet {
  const made = templatesWorksheet(ids.map(template), dataset);
  if (!made.ok) throw new Error(made.diagnostics.map(({ message }) => message).join("\n"));
  return made.worksheet;
}

describe("a sheet of templates", () => {
  const sheet = sheetOf("decoupling-section", "output-single-ended");
  const [decoupling, output] = sheet.stages;

  it("has the stages in the order asked, each with its own cautions, the gravest first", () => {
    expect(sheet.stages.map(({ id }) => id)).toEqual(["decoupling-section", "output-single-ended"]);
    expect(new Set(decoupling?.cautions.map(({ id }) => id))).toEqual(new Set(template("decoupling-section").cautions));
    const ranks = output!.cautions.map(({ id }) => dataset.cautions.get(id)!.rank);
    expect(ranks).toEqual(ranks.toSorted((a, b) => a - b));
    expect(sheet.cautions.every(({ id }) => dataset.cautions.get(id)?.always === true)).toBe(true);
    expect(sheet.cautions.length).toBeGreaterThan(0);
  });

  it("asks of each part what the template asks, with limits that follow from its drift limit", () => {
    const resistor = decoupling?.parts.find(({ role }) => role === "droppingResistor");
    // The record: 10 kohm, changed at more than 20 %: 8 to 12 kohm.
    expect(resistor).toMatchObject({ typical: "10 kohm 1 W", optional: false, measures: [{ quantity: "resistance", unit: "ohm" }] });
    expect(resistor?.measures[0]?.low).toBeCloseTo(8000, 6);
    expect(resistor?.measures[0]?.high).toBeCloseTo(12000, 6);
    expect(resistor?.marked).toBeUndefined();
    const capacitor = decoupling?.parts.find(({ role }) => role === "decouplingCapacitor");
    expect(capacitor?.measures.map(({ quantity }) => quantity)).toEqual(["capacitance", "leakage", "esr"]);
    expect(capacitor?.measures.every(({ how }) => how !== "")).toBe(true);
  });

  it("lists every role of the template, optional ones as such and with nothing marked", () => {
    expect(output?.parts.map(({ role }) => role)).toEqual(template("output-single-ended").parts.map(({ role }) => role));
    const optional = output!.parts.filter((part) => part.optional);
    expect(optional.map(({ role }) => role)).toEqual(
      template("output-single-ended")
        .parts.filter((part) => part.optional)
        .map(({ role }) => role),
    );
    expect(optional.every(({ marked }) => marked === undefined)).toBe(true);
  });

  it("takes the template's own windows, and works out the rest", () => {
    expect(decoupling?.points).toContainEqual(
      expect.objectContaining({
        at: "decoupled",
        condition: "operating",
        quantity: "dc-volts",
        low: 245,
        high: 255,
        source: "common-practice",
      }),
    );
    const supply = decoupling?.points.find(({ at, condition }) => at === "supply" && condition === "operating");
    // 300 V behind 10 ohm at 5 mA: 299.95 V (Ohm's law), give or take battery and meter.
    expect(supply).toMatchObject({ source: "computed", quantity: "dc-volts" });
    expect(supply!.low!).toBeLessThan(299.95);
    expect(supply!.high!).toBeGreaterThan(299.95);
    expect(supply!.high! - supply!.low!).toBeLessThan(0.15 * 299.95);
  });

  it("works cold before hot, and asks nothing twice", () => {
    const order = sheet.conditions.map(({ id }) => id);
    expect(order[0]).toBe("cold");
    expect(order.at(-1)).toBe("operating");
    for (const { points } of sheet.stages) {
      const places = points.map(({ condition }) => order.indexOf(condition));
      expect(places).toEqual(places.toSorted((a, b) => a - b));
      const keys = points.map(({ condition, at, to, quantity }) => `${condition} ${at} ${to} ${quantity}`);
      expect(new Set(keys).size).toBe(keys.length);
    }
  });

  it("asks volts only of powered conditions and ohms only of unpowered ones", () => {
    for (const { points } of sheet.stages)
      for (const point of points) expect(point.quantity === "ohms", JSON.stringify(point)).toBe(point.condition === "cold");
  });
});

it.each([...dataset.stages.keys()])("%s gives a sheet with parts, methods and at least one reading", (id) => {
  const [stage] = sheetOf(id).stages;
  expect(stage?.parts.length).toBe(template(id).parts.length);
  expect(stage?.points.length).toBeGreaterThan(0);
  for (const { low, high } of stage?.points ?? []) if (low !== undefined) expect(low).toBeLessThanOrEqual(high!);
});

describe("a sheet of a job", () => {
  const text = JSON.stringify({
    format: 1,
    title: "Two sections",
    chassis: { era: 1950, line: { designVolts: "117 V", hertz: 60 } },
    stages: [
      {
        id: "one",
        template: "decoupling-section",
        bind: { supply: "B+", decoupled: "B+ one" },
        parts: { droppingResistor: { name: "R1", marked: "22k 1W" } },
      },
      { id: "two", template: "decoupling-section", bind: { supply: "B+ one", decoupled: "B+ two" } },
    ],
    parts: [
      { name: "BT", kind: "battery", between: ["B+", "chassis"], marked: "300 V" },
      { name: "R9", kind: "resistor", between: ["B+ two", "chassis"], marked: "100k" },
    ],
  });
  const made = jobWorksheet({ job: { name: "job.json", text } }, dataset);
  const stages = made.ok ? made.worksheet.stages : [];

  it("has the job's names, points and values", () => {
    expect(stages.map(({ id }) => id)).toEqual(["one", "two", ""]);
    expect(stages[0]?.parts[0]).toMatchObject({ name: "R1", marked: "22k 1W", between: "B+ - B+ one" });
    expect(stages[1]?.parts[0]).toMatchObject({ name: "", typical: "10 kohm 1 W" });
    expect(stages[2]?.parts.map(({ name }) => name)).toEqual(["R9"]);
  });

  it("works its windows out with the job's values, not the template's", () => {
    // 300 V over 22k + 10k + 100k: B+ two is 300 * 100 / 132 = 227.3 V (voltage divider); the template would say 245 to 255 V.
    const point = stages[1]?.points.find(({ at, condition }) => at === "B+ two" && condition === "operating");
    expect(point?.source).toBe("computed");
    expect((point!.low! + point!.high!) / 2 / 227.3).toBeCloseTo(1, 1);
  });

  it("asks a point that two stages share once", () => {
    const keys = stages.flatMap(({ points }) => points.map(({ condition, at, quantity }) => `${condition} ${at} ${quantity}`));
    expect(new Set(keys).size).toBe(keys.length);
  });

  it("is refused with the job's own problems", () => {
    const refused = jobWorksheet({ job: { name: "job.json", text: '{ "format": 1' } }, dataset);
    expect(refused.ok).toBe(false);
  });
});
