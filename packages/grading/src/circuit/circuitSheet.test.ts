import { describe, expect, it } from "vitest";
import { modelOf } from "../testing/model.ts";
import { supplyParts } from "../testing/supply.ts";
import { circuitSheet } from "./circuitSheet.ts";

describe("circuit sheet", () => {
  const sheet = circuitSheet(modelOf({ title: "bench supply", parts: supplyParts() }), "restored", "operating");

  it("names the situation that it is of", () => {
    expect(sheet).toMatchObject({ title: "bench supply", life: "restored", condition: "operating", lineVolts: 120, hertz: 60 });
    // Chassis, earth and the line's neutral are one point here; any of the names serves.
    expect(sheet.points.some(({ point }) => point === "B+2")).toBe(true);
  });

  it("has the elements of the network and, for each, what it carries", () => {
    const ids = sheet.elements.map(({ id }) => id);
    expect(ids).toEqual(expect.arrayContaining(["line", "T1", "C1", "L1", "C2", "R1", "LOAD", "V1/plate-1", "V1/plate-2", "V1/heater"]));
    for (const id of ids.filter((id) => id !== "T1")) expect(sheet.currents.map(({ element }) => element)).toContain(id);
  });

  it("keeps Kirchhoff's and Ohm's laws", () => {
    expect(sheet.currentResidual).toBeLessThan(1e-6);
    const current = (id: string) => sheet.currents.find(({ element }) => element === id)!;
    const output = sheet.points.find(({ point }) => point === "B+2")!;
    expect(current("R1").meanAmps).toBeCloseTo(output.meanVolts / 100e3, 7);
    // What goes through the choke is what load and bleeder take: no capacitor passes direct current.
    expect(current("L1").meanAmps).toBeCloseTo(0.06 + output.meanVolts / 100e3, 5);
    expect(output.rippleVolts).toBeCloseTo(output.maxVolts - output.minVolts, 12);
    expect(output.maxVolts).toBeGreaterThan(output.meanVolts);
  });

  it("says what does not work where there is no steady state", () => {
    const model = modelOf({
      parts: [
        { name: "R1", kind: "resistor", marked: "1 kohm", between: ["x", "y"] },
        { name: "B", kind: "battery", marked: "9 V", between: ["a", "chassis"] },
      ],
    });
    expect(() => circuitSheet(model, "restored", "operating")).toThrow(/[xy]/);
  });
});
