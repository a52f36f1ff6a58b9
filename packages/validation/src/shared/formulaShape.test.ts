import { describe, expect, it } from "vitest";
import { shapeOf } from "./formulaShape.ts";

describe("the shape of a formula", () => {
  it.each([
    ["reservoir.ratedVolts >= 453.7", "reservoir.ratedVolts >= 7.7777"],
    ["0.0465 * cathode1.ohms", "7.7777 * cathode1.ohms"],
    ["1.1 * a.maxVolts + 2", "1.1 * a.maxVolts + 2"],
    ["a.meanAmps / b.ratedVolts ^ 1.523", "a.meanAmps / b.ratedVolts ^ 1.523"],
    ["a.x ^ (-1.523)", "a.x ^ (-1.523)"],
    ['volts("B+ 250.5") > 250.5', 'volts("B+ 250.5") > 7.7777'],
    ["pow(a.x, 1.523)", "pow(a.x, 1.523)"],
    ["20.5e-6 < a.farads", "20.5e-6 < a.farads"],
    ["12345678901234567890 < a.ohms", "12345678901234567890 < a.ohms"],
    ["a1.b22", "a1.b22"],
  ])("of %s is %s", (text, shape) => expect(shapeOf(text)).toBe(shape));

  it("is the same for formulas that differ in a quantity, and not for those that differ in a factor", () => {
    expect(shapeOf("a.ohms < 4711.5")).toBe(shapeOf("a.ohms < 333.25"));
    expect(shapeOf("a.ohms < 2 * b.ohms")).not.toBe(shapeOf("a.ohms < 3 * b.ohms"));
  });
});
