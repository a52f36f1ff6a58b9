import type { JobPart } from "@underchassis/dataset";
import { expect, it } from "vitest";
import { modelOf } from "../testing/model.ts";
import { candidateMeasurements } from "./candidates.ts";

const supply: JobPart[] = [
  { name: "F1", kind: "fuse", marked: "1 A 250 V", between: ["line hot", "T1 pri"] },
  {
    name: "T1",
    kind: "transformer",
    windings: {
      primary: { between: ["T1 pri", "line neutral"], marked: "117 V", measured: "5 ohm" },
      hv: { between: ["hv", "chassis"], marked: "200 V", measured: "150 ohm" },
    },
  },
  { name: "D1", kind: "rectifier", type: "silicon 1000 V 1 A", between: ["hv", "raw"] },
  { name: "C1", kind: "capacitor", marked: "20 uF 450 V", between: ["raw", "chassis"] },
  { name: "R1", kind: "resistor", marked: "2.2 kohm", between: ["raw", "B+"] },
  { name: "C2", kind: "capacitor", marked: "20 uF 450 V", between: ["B+", "chassis"] },
  { name: "R2", kind: "resistor", marked: "47 kohm", between: ["B+", "chassis"] },
];

const candidates = (parts: JobPart[]) => {
  const model = modelOf({ parts, readings: [{ at: "raw", quantity: "dc-volts", condition: "operating", value: "200 V" }] });
  return candidateMeasurements(model, "found", model.readings).map(
    ({ quantity, at, to, condition }) => `${quantity} ${at} ${to} ${condition}`,
  );
};

it("offers every point beyond the line, cold and with power, and none of the line's", () => {
  const offered = candidates(supply);
  for (const at of ["hv", "raw", "B+"]) expect(offered).toContain(`ohms ${at} chassis cold`);
  for (const at of ["hv", "B+"]) expect(offered).toContain(`dc-volts ${at} chassis operating`);
  for (const at of ["raw", "B+"]) expect(offered).toContain(`ripple-volts ${at} chassis operating`);
  expect(offered.filter((text) => /line|T1 pri/.test(text))).toEqual([]);
});

it("offers ohms across parts between two points, and nothing that was read", () => {
  const offered = candidates(supply);
  expect(offered).toContain("ohms raw B+ cold");
  expect(offered).not.toContain("dc-volts raw chassis operating");
  expect(new Set(offered).size).toBe(offered.length);
});
