import { solveSteady } from "@underchassis/calc";
import type { JobPart } from "@underchassis/dataset";
import { describe, expect, it } from "vitest";
import { modelOf } from "../testing/model.ts";
import { lay, logSpread, stretchOf } from "./ground.ts";
import { observableOf } from "./observable.ts";
import { Screen } from "./screen.ts";

describe("logSpread", () => {
  it.each([
    [0.05, 0.05],
    [0.2, 0.5],
    [0.1, 0.8],
  ])("of -%s +%s is that of a fine sum", (minus, plus) => {
    let [sum, squares] = [0, 0];
    const steps = 100_000;
    for (let k = 0; k < steps; k += 1) {
      const x = Math.log(1 - minus + ((minus + plus) * (k + 0.5)) / steps);
      sum += x / steps;
      squares += x ** 2 / steps;
    }
    const { deviation, offset } = logSpread(minus, plus);
    expect(deviation).toBeCloseTo(Math.sqrt(squares - sum ** 2), 6);
    expect(offset * deviation).toBeCloseTo(sum, 6);
  });

  it("of a small even tolerance is its width over the root of twelve", () => {
    expect(logSpread(0.01, 0.01).deviation).toBeCloseTo(0.02 / Math.sqrt(12), 6);
  });
});

it("tolerances scale a reading, but for ohms, small readings and what is beyond all measure", () => {
  expect(stretchOf("dc-volts", 50, 100, 300)).toBe(0.5);
  expect(stretchOf("dc-volts", 900, 100, 300)).toBe(3);
  expect(stretchOf("dc-volts", 50, 1, 300)).toBe(1);
  expect(stretchOf("ohms", 2, 4, 300)).toBe(1);
});

const supply: JobPart[] = [
  {
    name: "T1",
    kind: "transformer",
    windings: {
      primary: { between: ["line hot", "line neutral"], marked: "117 V", measured: "5 ohm" },
      hv: { between: ["hv", "chassis"], marked: "200 V", measured: "150 ohm" },
    },
  },
  { name: "D1", kind: "rectifier", type: "silicon 1000 V 1 A", between: ["hv", "raw"] },
  { name: "C1", kind: "capacitor", marked: "20 uF 450 V", between: ["raw", "chassis"] },
  { name: "R1", kind: "resistor", marked: "2.2 kohm", between: ["raw", "B+"] },
  { name: "C2", kind: "capacitor", marked: "20 uF 450 V", between: ["B+", "chassis"] },
  { name: "R2", kind: "resistor", marked: "47 kohm", between: ["B+", "chassis"] },
];

describe("lay", () => {
  const model = modelOf({
    parts: supply,
    readings: [
      { at: "B+", quantity: "dc-volts", condition: "operating", value: "250 V" },
      { at: "B+", quantity: "ohms", condition: "cold", value: "47 kohm" },
    ],
  });
  const ground = lay(model, "found", model.readings.map(observableOf));
  const [volts] = ground.situations.filter(({ steady }) => steady !== undefined);

  it("reads the sound chassis as the engine does", () => {
    const whole = solveSteady(volts!.network, { hertz: 60, stepsPerPeriod: 96, islands: "tie" });
    expect(ground.nominal[0]).toBeCloseTo((whole.points.get("B+")?.meanVolts ?? 0) * (ground.loading[0] ?? 1), 2);
    // R2 alone, on the logarithm that ends in a lead's 0.2 ohm; leakages of tens of megohms lie across it.
    expect(ground.nominal[1]).toBeCloseTo(Math.log(47e3 + 0.2), 2);
  });

  it("has the slope of every value, cold and with power", () => {
    const column = ground.parameters.findIndex(({ key }) => key.startsWith("R2|ohms"));
    const { deviation } = ground.parameters[column] ?? { deviation: 0 };
    const changed = (factor: number) => ({
      ...volts!.network,
      elements: volts!.network.elements.map((element) =>
        element.id === "R2" && element.kind === "resistor" ? { ...element, ohms: element.ohms * factor } : element,
      ),
    });
    const read = (factor: number) =>
      solveSteady(changed(factor), { hertz: 60, stepsPerPeriod: 96, islands: "tie" }).points.get("B+")?.meanVolts ?? 0;
    const slope = ((read(1.01) - read(0.99)) / 0.02) * deviation;
    // Slopes are taken with half the steps, which moves the instants at which the rectifier opens and closes: up to 8 % of a slope.
    expect(ground.slopes[column]! / slope).toBeGreaterThan(0.92);
    expect(ground.slopes[column]! / slope).toBeLessThan(1.08);
    expect(ground.slopes[ground.parameters.length + column]).toBeCloseTo(deviation, 3);
  });

  it("and the first look agrees with both, about any fault that is a matter of resistance", () => {
    const screen = new Screen(ground);
    const none = { kind: "wrong-value", part: "R2", element: "R2", parameter: "ohms", value: 47e3, nominal: 47e3 } as const;
    const predicted = screen.predict(none);
    expect(predicted?.[0]).toBeCloseTo(ground.nominal[0] ?? 0, 3);
    expect(predicted?.[1]).toBeCloseTo(ground.nominal[1] ?? 0, 6);
    const slopes = screen.slopes(none, ground.nominal);
    const column = ground.parameters.findIndex(({ key }) => key.startsWith("R2|ohms"));
    // A step of 3 % to one side, by which the slope of a divider bends, and the whole number of steps against half of it.
    expect(slopes[column]! / ground.slopes[column]!).toBeGreaterThan(0.89);
    expect(slopes[column]! / ground.slopes[column]!).toBeLessThan(1.11);
  });
});
