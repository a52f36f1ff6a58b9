import { portScratch } from "../devices/port-device.ts";
import type { LinearResponse, PlacedPort, StirredPort } from "./linear-response.ts";
import { tangent } from "./plant.ts";
import type { Unknowns } from "./unknowns.ts";

/** Alternating voltage, in volts, below which a tube port counts as still, and current, in amperes, below which nothing is put right. */
const STILL_VOLTS = 1e-4;
const STILL_AMPS = 1e-10;

/** What the tubes' currents are beyond their folded-in slopes, found along their voltages. */
export interface Stir {
  ports: StirredPort[];
  /** Mean current that comes of a tube's curvature, by quiet port, in amperes. */
  excess: Float64Array;
  /** Largest change of a stirred current since the last time, as a share of the tube's alternating current. */
  moved: number;
  /** Devices whose currents moved most of their own size. */
  restless: ReadonlySet<string>;
}

/** Nothing stirred yet. */
export function stillTubes(linear: LinearResponse): Stir {
  return { ports: [], excess: new Float64Array(linear.quiet.length), moved: 0, restless: new Set() };
}

/**
 * Follows every tube along its own curve over the voltages found: what it draws beyond the slopes folded in for it acts on the network
 * like a source.
 */
export function stirTubes(linear: LinearResponse, unknowns: Unknowns, means: Float64Array, last: Stir, share: number): Stir {
  const { steps } = linear.plant.symbol;
  const { weights } = linear;
  const stages = 2 * steps;
  const ports: StirredPort[] = [];
  const excess = new Float64Array(linear.quiet.length);
  const before = new Map(last.ports.map(({ port, amps }) => [port, amps]));
  const restless = new Set<string>();
  let moved = 0;
  linear.quiet.forEach(({ device, index }, at) => {
    if (index !== 0) return;
    const count = device.plus.length;
    const placed: readonly PlacedPort[] = linear.quiet.slice(at, at + count);
    if (!before.has(placed[0]!) && isTame(unknowns, placed, means.subarray(at, at + count), share)) return;
    const volts = placed.map(({ column }) => unknowns.wave(column.plus, column.minus));
    const beyond = placed.map(() => new Float64Array(stages));
    const still = tangent(device, means.slice(at, at + count)).amps.slice();
    const scratch = portScratch(count);
    const sums = new Float64Array(count);
    const squares = new Float64Array(count);
    for (let stage = 0; stage < stages; stage++) {
      for (let k = 0; k < count; k++) scratch.volts[k] = volts[k]![stage]!;
      device.device.evaluate(scratch, 0);
      const weight = weights[stage & 1]!;
      for (let k = 0; k < count; k++) {
        let own = scratch.amps[k]! - still[k]!;
        sums[k] = sums[k]! + weight * own;
        squares[k] = squares[k]! + weight * own * own;
        for (let c = 0; c < count; c++) own -= device.fold[k * count + c]! * (scratch.volts[c]! - means[at + c]!);
        beyond[k]![stage] = own;
      }
    }
    for (let k = 0; k < count; k++) {
      excess[at + k] = sums[k]!;
      const amps = beyond[k]!;
      let mean = 0;
      for (let stage = 0; stage < stages; stage++) mean += weights[stage & 1]! * amps[stage]!;
      const old = before.get(placed[k]!);
      let square = 0;
      for (let stage = 0; stage < stages; stage++) {
        amps[stage] = amps[stage]! - mean;
        square += weights[stage & 1]! * (amps[stage]! - (old === undefined ? 0 : old[stage]!)) ** 2;
      }
      const change = Math.sqrt(square) / (Math.sqrt(squares[k]!) + STILL_AMPS);
      if (change > 0.3) restless.add(device.id);
      moved = Math.max(moved, change);
      ports.push({ port: placed[k]!, amps });
    }
  });
  return { ports, excess, moved, restless };
}

/** Whether a tube's folded-in slopes describe its currents as far as its voltages alternate. */
function isTame(unknowns: Unknowns, placed: readonly PlacedPort[], means: Float64Array, share: number): boolean {
  const { device } = placed[0]!;
  const count = placed.length;
  const middle = tangent(device, Float64Array.from(means));
  const { amps, slopes } = { amps: middle.amps.slice(), slopes: middle.slopes.slice() };
  const swings = placed.map(({ column }) => 1.5 * unknowns.alternating(column.plus, column.minus));
  for (let k = 0; k < count; k++) {
    if (swings[k]! < STILL_VOLTS) continue;
    for (let sign = -1; sign <= 1; sign += 2) {
      const moved = Float64Array.from(means);
      moved[k] = moved[k]! + sign * swings[k]!;
      const found = tangent(device, moved).amps;
      for (let j = 0; j < count; j++) {
        let own = STILL_AMPS / share;
        for (let c = 0; c < count; c++) own += Math.abs(slopes[j * count + c]!) * swings[c]!;
        const wrong = Math.abs(found[j]! - amps[j]! - device.fold[j * count + k]! * sign * swings[k]!);
        if (!(wrong <= share * own)) return false;
      }
    }
  }
  return true;
}
