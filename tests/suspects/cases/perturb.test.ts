import { loadDataset } from "@underchassis/dataset/load";
import { expect, it } from "vitest";
import { CaseMaker } from "./caseMaker.ts";
import { perturb, scaled } from "./perturb.ts";

const maker = new CaseMaker("output-6v6", loadDataset());
const drawn = (condition: "cold" | "operating", seed: string) =>
  new Map(maker.networkOf(condition, seed, []).elements.map((element) => [element.id, element]));

it("draws every resistor within its tolerance, and the same one in every condition", () => {
  const values = Array.from({ length: 200 }, (_, n) => {
    const [cold, hot] = [drawn("cold", `s${n}`).get("R3"), drawn("operating", `s${n}`).get("R3")];
    if (cold?.kind !== "resistor" || hot?.kind !== "resistor") throw new Error("no R3");
    expect(hot.ohms).toBe(cold.ohms);
    return cold.ohms;
  });
  // 220 kohm, 10 %: all inside, some in each outer tenth; a uniform distribution has its standard deviation at 0.577 of the half-width.
  expect(Math.min(...values)).toBeGreaterThanOrEqual(198e3);
  expect(Math.max(...values)).toBeLessThanOrEqual(242e3);
  expect(Math.min(...values)).toBeLessThan(203e3);
  expect(Math.max(...values)).toBeGreaterThan(237e3);
  const mean = values.reduce((a, b) => a + b, 0) / values.length;
  const deviation = Math.sqrt(values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / values.length);
  expect(deviation / 22e3).toBeGreaterThan(0.5);
  expect(deviation / 22e3).toBeLessThan(0.65);
});

it("keeps the outlet within its own small spread", () => {
  const compiled = maker.compiled.get("operating");
  if (compiled === undefined) throw new Error("not at work");
  for (let n = 0; n < 50; n += 1) {
    const line = perturb(compiled, `s${n}`).elements.find(({ id }) => id === "line");
    if (line?.kind !== "voltage-source") throw new Error("no line");
    expect(Math.abs((line.rmsVolts ?? 0) / 117 - 1)).toBeLessThanOrEqual(0.015);
  }
});

it("multiplies what it is told to, and refuses what is not there", () => {
  const tube = drawn("operating", "x").get("V2");
  if (tube === undefined) throw new Error("no V2");
  expect(scaled({ kind: "resistor", id: "R", nodes: ["a", "b"], ohms: 100 }, "ohms", 2)).toMatchObject({ ohms: 200 });
  expect(() => scaled(tube, "farads", 2)).toThrow("V2 has no farads");
});
