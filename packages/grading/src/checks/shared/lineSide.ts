import type { ChassisModel, Life } from "../../model/index.ts";
import { allIn, endsOf, type Placed, reach } from "./layout.ts";

/** Parts through which the line's conductors go on: what lies between the plug and the primary (or the rectifier). */
const SERIES = new Set(["fuse", "breaker", "switch", "thermistor", "inductor", "lamp"]);

/** Where the two conductors of the line go, and what the user can touch. */
export interface LineSide {
  /** False when nothing in the job touches the line. */
  known: boolean;
  /** Points on the hot conductor, with the parts between the plug and each. */
  hot: ReadonlyMap<string, readonly Placed[]>;
  neutral: ReadonlyMap<string, readonly Placed[]>;
  /** Chassis, cabinet, earth: what can be touched. */
  frame: ReadonlySet<string>;
  /** Fuses, switches, limiters in the hot conductor, from the plug inwards; and those in the neutral. */
  hotParts: readonly Placed[];
  neutralParts: readonly Placed[];
}

/** Follows the line's conductors from the plug through cord, fuses, switches and limiters. */
export function lineSide(model: ChassisModel, life: Life): LineSide {
  const { hot: hotPoint, neutral: neutralPoint, earth } = model.line;
  const passes = ({ part }: Placed) => SERIES.has(part.kind);
  const hot = reach(model, life, hotPoint, passes, new Set([neutralPoint]));
  const neutral = reach(model, life, neutralPoint, passes, new Set(hot.keys()));
  // A set without a transformer has its B- on the line; only its chassis and cabinet are touched.
  const touched = model.isolation === "transformer" ? [model.reference, earth] : ["chassis", "cabinet", earth];
  const frame = new Set(touched.flatMap((point) => [...reach(model, life, point, () => false).keys()]));
  return {
    known: allIn(model, life).some(
      ({ state }) => Object.values(state.pins).includes(hotPoint) || (state.windings ?? []).some(({ points }) => points.includes(hotPoint)),
    ),
    hot,
    neutral,
    frame,
    hotParts: seriesParts(hot),
    neutralParts: seriesParts(neutral),
  };
}

function seriesParts(points: ReadonlyMap<string, readonly Placed[]>): Placed[] {
  const deepest = new Map<Placed["part"], { placed: Placed; depth: number }>();
  for (const way of points.values()) for (const [depth, placed] of way.entries()) deepest.set(placed.part, { placed, depth });
  return [...deepest.values()].sort((a, b) => a.depth - b.depth).map(({ placed }) => placed);
}

/**
 * RMS volts that fuses, switches and class X and Y parts of the line must be marked for: the line as it stands. Their standards rate
 * them for a nominal line and allow for its swing, so that 125 V serves a 120 V line and 250 V one of 230 V (IEC 60384-14, IEC 60127).
 */
export const nominalVolts = (model: ChassisModel): number => model.line.actualVolts;

/** How a capacitor or resistor lies to the line: between a conductor and what can be touched, or across the line. */
export function lineDuty({ part, state }: Placed, side: LineSide): "line-to-chassis" | "across-line" | undefined {
  const ends = endsOf(state);
  if (ends !== undefined) {
    const on = (set: { has(point: string): boolean }) => ends.findIndex((point) => set.has(point));
    const other = (index: number) => ends[1 - index] ?? "";
    const [hot, neutral] = [on(side.hot), on(side.neutral)];
    if (hot >= 0 && side.neutral.has(other(hot))) return "across-line";
    for (const index of [hot, neutral])
      if (index >= 0 && side.frame.has(other(index)) && !side.frame.has(ends[index] ?? "")) return "line-to-chassis";
  }
  return part.duty === "line-to-chassis" || part.duty === "across-line" ? part.duty : undefined;
}
