import { describe, expect, it } from "vitest";
import { modelOf } from "../testing/model.ts";
import { groundOf, halfWaveParts, observableAt, outputStageParts } from "../testing/suspectChassis.ts";
import { forbiddenPoints, hazardOf } from "./hazards.ts";

describe("forbiddenPoints", () => {
  it("are grids, heaters and earth; not a rectifier's own filament, nor the reference", () => {
    const forbidden = forbiddenPoints(modelOf({ parts: [...outputStageParts] }), "found");
    expect([...forbidden].sort()).toEqual(["earth", "grid", "heater 2"]);
  });

  it("follow the life: a grid that has been moved", () => {
    const moved = outputStageParts.map((part) =>
      part.name === "V2" ? { ...part, fitted: { pins: { plate: "plate", screen: "B+", grid: "grid b", cathode: "cathode" } } } : part,
    );
    const model = modelOf({ parts: [...moved, { name: "R6", kind: "resistor", marked: "470 kohm", between: ["grid b", "chassis"] }] });
    expect(forbiddenPoints(model, "found").has("grid")).toBe(true);
    expect(forbiddenPoints(model, "restored").has("grid b")).toBe(true);
    expect(forbiddenPoints(model, "restored").has("grid")).toBe(false);
  });

  it("are the case where it is not the reference", () => {
    // A transformerless set: B- is no case.
    const parts = halfWaveParts
      .filter(({ name }) => name !== "T1")
      .map((part) => ({
        ...part,
        between: part.between!.map((point) => ({ hv: "line hot", chassis: "line neutral" })[point] ?? point) as [string, string],
      }));
    const model = modelOf({ reference: "line neutral", parts });
    expect(forbiddenPoints(model, "found").has("chassis")).toBe(true);
    expect(forbiddenPoints(model, "found").has("line neutral")).toBe(false);
  });
});

describe("hazardOf", () => {
  const ground = groundOf([
    { observable: observableAt("dc-volts", "plate"), nominal: 200 },
    { observable: observableAt("dc-volts", "grid"), nominal: -5 },
    { observable: observableAt("ripple-volts", "grid"), nominal: 0 },
  ]);
  const forbidden = new Set(["grid"]);
  const hazard = (plate: number, grid: number, ripple = 0) => hazardOf(ground, forbidden, Float64Array.of(plate, grid, ripple));

  it("is a direct voltage thirty volts above the healthy one, of either sign", () => {
    expect(hazard(200, 36)).toEqual({ point: "grid to chassis", volts: 36, healthy: -5 });
    expect(hazard(200, -36)?.volts).toBe(-36);
    expect(hazard(200, 34)).toBeUndefined();
  });

  it("is none at a point that may carry it, of ripple, or of what is not known", () => {
    expect(hazard(400, 0)).toBeUndefined();
    expect(hazard(200, 0, 300)).toBeUndefined();
    expect(hazard(200, Number.NaN)).toBeUndefined();
  });
});
