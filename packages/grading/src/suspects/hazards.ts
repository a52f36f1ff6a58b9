import type { ChassisModel, Life } from "../model/index.ts";
import type { Ground } from "./ground.ts";

/** A point where B+ must never be: grid, heater, case. */
export interface Hazard {
  point: string;
  volts: number;
  healthy: number;
}

/** Direct volts above the healthy reading that no grid, heater or case may carry. common-practice. */
const TOO_MANY_VOLTS = 30;

/** Grids, heater windings, and the case where it is not the reference. */
export function forbiddenPoints(model: ChassisModel, life: Life): ReadonlySet<string> {
  const out = new Set<string>(["chassis", model.line.earth]);
  for (const part of model.parts.values()) {
    const { pins, windings } = part.lives[life];
    if (part.kind === "tube" && pins.grid !== undefined) out.add(pins.grid);
    for (const winding of windings ?? [])
      if (/heater/i.test(winding.id) && !/rect/i.test(winding.id)) for (const point of winding.points) out.add(point);
  }
  out.delete(model.reference);
  return out;
}

/** Where a suspect would put B+ that must not be there, by its predicted readings. */
export function hazardOf(ground: Ground, forbidden: ReadonlySet<string>, predicted: Float64Array): Hazard | undefined {
  for (const [index, { quantity, at, to }] of ground.observables.entries()) {
    if (quantity !== "dc-volts" || !forbidden.has(at)) continue;
    const [volts, healthy] = [predicted[index]!, ground.nominal[index]!];
    if (Number.isFinite(volts) && Math.abs(volts) - Math.abs(healthy) > TOO_MANY_VOLTS) return { point: `${at} to ${to}`, volts, healthy };
  }
  return undefined;
}
