/** All cases of one chassis: healthy ones, single faults of every kind, and pairs of faults. */
import type { Dataset } from "@underchassis/dataset";
import { drawFault, groundOf } from "../faults/drawFault.ts";
import { describeFault, SEEDED_KINDS, type SeededFault } from "../faults/seededFault.ts";
import { FloatingGrid } from "../oracle/prepare.ts";
import { quickVersion } from "../oracle/quickRun.ts";
import { Random } from "../random.ts";
import type { CaseFile, StoredCase, StoredReadings } from "./caseFile.ts";
import { CaseMaker, Overload } from "./caseMaker.ts";
import { HealthySpread } from "./detectable.ts";
import { meterSigma } from "./meterError.ts";

/** Healthy chassis of a supply alone, and of one with tubes, which take the simulator five times as long. */
const HEALTHY = { supply: 44, tubes: 16 } as const;
const SINGLE = 42;
/** Cases with two faults at once: no single fault explains them. */
const DOUBLE = 4;
/** Draws before a kind is given up. */
const MOST_DRAWS = 6;

export type Log = (line: string) => void;

export async function makeCases(id: string, dataset: Dataset, log: Log): Promise<CaseFile> {
  const maker = new CaseMaker(id, dataset);
  const nominal = await maker.nominal();
  log(`${id}: nominal, ${maker.points.length} points, ${maker.pairs.length} pairs`);
  const healthy: StoredReadings[] = [];
  const network = maker.compiled.get("operating")?.network;
  if (network === undefined) throw new Error(`${id} is never at work`);
  const hasTubes = network.elements.some(({ kind }) => kind === "triode" || kind === "pentode");
  for (let n = 0; n < (hasTubes ? HEALTHY.tubes : HEALTHY.supply); n += 1) healthy.push(await maker.readings(`${id} healthy ${n}`, []));
  log(`${id}: ${healthy.length} healthy`);
  const ground = { ...groundOf(maker.model, network), points: [...maker.points, network.reference].sort() };
  const spread = new HealthySpread(healthy);
  const first = (flat: { quantity: string; point: number; condition: string }): boolean => {
    const point = maker.points[flat.point] ?? "";
    if (flat.condition !== maker.play.condition) return false;
    return (flat.quantity === "dc-volts" ? maker.play.dc : flat.quantity === "ripple-volts" ? maker.play.ripple : []).includes(point);
  };
  const redrawn: Record<string, number> = {};
  const cases: StoredCase[] = [];
  const seen = new Set<string>();

  const add = async (seed: string, faults: SeededFault[]): Promise<boolean> => {
    const words = faults.map(describeFault).join(" + ");
    if (seen.has(words)) return false;
    seen.add(words);
    try {
      const readings = await maker.readings(seed, faults);
      const detectable = spread.isOff(readings, meterSigma);
      cases.push({ faults, detectable, atFirstReadings: spread.isOff(readings, meterSigma, first), ...readings });
      return true;
    } catch (error) {
      const reason =
        error instanceof Overload || error instanceof FloatingGrid
          ? error.message.replace(/^\S+: /, "")
          : "no steady state in the simulator";
      redrawn[reason] = (redrawn[reason] ?? 0) + 1;
      return false;
    }
  };
  const random = new Random(id, "faults");
  const draw = (): SeededFault | undefined => drawFault(random.pick(SEEDED_KINDS), ground, random);
  let queue = [...random.shuffle(SEEDED_KINDS)];
  while (cases.length < SINGLE) {
    const kind = queue.shift() ?? "open";
    if (queue.length === 0) queue = [...random.shuffle(SEEDED_KINDS)];
    for (let attempt = 0; attempt < MOST_DRAWS; attempt += 1) {
      const fault = drawFault(kind, ground, random);
      if (fault === undefined) break;
      if (await add(`${id} case ${cases.length}.${attempt}`, [fault])) break;
    }
  }
  while (cases.length < SINGLE + DOUBLE) {
    const [a, b] = [draw(), draw()];
    if (a === undefined || b === undefined || a.part === b.part) continue;
    await add(`${id} double ${cases.length}`, [a, b]);
  }
  log(
    `${id}: ${cases.length} cases, ${cases.filter(({ detectable }) => detectable).length} detectable, redrawn ${JSON.stringify(redrawn)}, disagreements ${maker.disagreements.length}`,
  );
  const simulator = await quickVersion();
  const { netlist, points, pairs, disagreements } = maker;
  return {
    chassis: id,
    simulator,
    netlist,
    reference: network.reference,
    points: [...points],
    pairs: [...pairs],
    nominal,
    healthy,
    cases,
    disagreements,
    redrawn,
  };
}
