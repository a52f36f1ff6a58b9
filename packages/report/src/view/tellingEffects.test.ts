import type { Report } from "@underchassis/dataset";
import { expect, it } from "vitest";
import { tellingEffects } from "./tellingEffects.ts";

type Effect = Report["changes"][number]["effects"][number];
const effect = (label: string, before: number | null, after: number | null, limit?: number): Effect => ({
  label,
  unit: "V",
  condition: "operating",
  before,
  after,
  ...(limit === undefined ? {} : { limit }),
});

it("puts a crossed limit first, then the largest relative shifts, and leaves out what hardly moved", () => {
  const effects = [
    effect("hardly", 428, 430),
    effect("ripple", 0.963, 0.188),
    effect("gone", null, 3),
    effect("crosses", 440, 460, 450),
    effect("doubles", 4, 8),
  ];
  expect(tellingEffects(effects, 2).map(({ label }) => label)).toStrictEqual(["crosses", "ripple"]);
  expect(tellingEffects(effects, 9).map(({ label }) => label)).toStrictEqual(["crosses", "ripple", "doubles"]);
});

it("counts the way back below a limit as crossing, and a zero that stays zero as nothing", () => {
  expect(tellingEffects([effect("zero", 0, 0), effect("back", 460, 455, 457)], 2).map(({ label }) => label)).toStrictEqual(["back"]);
});
