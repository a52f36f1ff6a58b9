import type { ChassisModel } from "../../model/index.ts";
import { solveAll } from "./stress.ts";

/** A point with the largest voltage that it ever has to the chassis. */
export interface StressedPoint {
  point: string;
  volts: number;
}

/**
 * Points whose crest to the chassis exceeds a voltage in some powered condition, at the highest line, as the chassis stands or as it
 * is planned.
 *
 * @param aboveVolts threshold of the crest's magnitude, in volts
 * @returns the points with the magnitude of their crest, highest first
 */
export function stressedPoints(model: ChassisModel, aboveVolts: number): StressedPoint[] {
  const highest = new Map<string, number>();
  for (const life of model.hasPlans ? (["restored", "planned"] as const) : (["restored"] as const)) {
    for (const { solved } of solveAll(model, life, "high")) {
      if (!solved.ok) continue;
      const { points } = solved.steady;
      for (const point of model.points.keys()) {
        const figures = points.get(solved.compiled.pointOf(point) ?? "");
        if (figures === undefined) continue;
        const volts = Math.max(Math.abs(figures.maxVolts), Math.abs(figures.minVolts));
        if (volts > (highest.get(point) ?? aboveVolts)) highest.set(point, volts);
      }
    }
  }
  return [...highest].map(([point, volts]) => ({ point, volts })).sort((a, b) => b.volts - a.volts);
}
