import type { ChassisModel, Life, Part, PartState } from "../../model/index.ts";
import { allIn, endsOf, type Placed, reach } from "./layout.ts";
import { allSolved } from "./solved.ts";
import { stresses } from "./stress.ts";

/** Capacitors below this are buffers and RF bypasses, not reservoirs. common-practice. */
const LEAST_RESERVOIR_FARADS = 0.5e-6;
/** Resistors up to this before the first capacitor limit surges; above they make a filter section. common-practice. */
const SURGE_RESISTOR_OHMS = 150;

/** Points that a rectifier feeds from and to: `plates` carry alternating voltage, `output` the direct one. */
export function rectifierPoints(state: PartState): { plates: string[]; cathode: string | undefined } {
  const { pins } = state;
  const plates = ["plate", "plate-1", "plate-2"].flatMap((pin) => pins[pin] ?? []);
  return plates.length > 0 ? { plates, cathode: pins.cathode } : { plates: pins.a === undefined ? [] : [pins.a], cathode: pins.b };
}

/** Points that a rectifier's cathode feeds without a filter between: through wire, fuses, switches and surge resistors. */
export function outputPoints(model: ChassisModel, life: Life, state: PartState): ReadonlySet<string> {
  const { cathode } = rectifierPoints(state);
  if (cathode === undefined) return new Set();
  const passes = ({ part, state: own }: Placed) =>
    part.kind === "fuse" ||
    part.kind === "breaker" ||
    part.kind === "switch" ||
    (part.kind === "resistor" && (own.main?.value ?? Number.POSITIVE_INFINITY) <= SURGE_RESISTOR_OHMS);
  return new Set(reach(model, life, cathode, passes, new Set([model.reference])).keys());
}

/** Capacitors that a rectifier charges directly. None when a choke comes first. */
export function reservoirs(model: ChassisModel, life: Life, state: PartState): Placed[] {
  const output = outputPoints(model, life, state);
  if (output.size === 0) return [];
  const candidates = allIn(model, life, "capacitor").filter(({ state: own }) => {
    const ends = endsOf(own);
    return (own.main?.value ?? 0) >= LEAST_RESERVOIR_FARADS && ends !== undefined && ends.filter((point) => output.has(point)).length === 1;
  });
  // With a choke or field coil in the negative lead, only what returns to the winding is charged directly.
  const { plates } = rectifierPoints(state);
  const returns = new Set(
    allIn(model, life, "transformer").flatMap(({ state: own }) =>
      (own.windings ?? []).flatMap(({ points }) =>
        points.some((point) => plates.includes(point)) ? points.filter((point) => !plates.includes(point)) : [],
      ),
    ),
  );
  const direct = candidates.filter(({ state: own }) => endsOf(own)?.some((point) => returns.has(point)) === true);
  return direct.length > 0 ? direct : candidates;
}

/** Mean current of a rectifier, all plates together, in the condition where it is largest, at the highest line; undefined when a condition cannot be solved. */
export function outputAmps(model: ChassisModel, life: Life, part: Part): { condition: string; amps: number } | undefined {
  if (!allSolved(model, life)) return undefined;
  const sums = new Map<string, number>();
  for (const { condition, meanAmps } of stresses(model, life).get(part.id) ?? [])
    sums.set(condition, (sums.get(condition) ?? 0) + Math.abs(meanAmps));
  return [...sums].reduce<{ condition: string; amps: number } | undefined>(
    (best, [condition, amps]) => (best === undefined || amps > best.amps ? { condition, amps } : best),
    undefined,
  );
}

/** True for tubes with a cathode or filament to heat. */
export function isTube(state: PartState): boolean {
  return state.heater !== undefined;
}

/** Rectifiers that a question is put to in a life: for a plan, those that it touches or whose reservoir it touches. */
export function rectifiersIn(model: ChassisModel, life: Life): Placed[] {
  return allIn(model, life, "rectifier").filter(
    ({ part, state }) =>
      life !== "planned" || part.change === "planned" || reservoirs(model, life, state).some((placed) => placed.part.change === "planned"),
  );
}
