import { primaryOf } from "../../compile/elements.ts";
import type { ChassisModel, Life, WindingSpec } from "../../model/index.ts";
import { allIn, type Placed } from "./layout.ts";
import { lineSide } from "./lineSide.ts";
import { solveAll } from "./stress.ts";
import { type WindingCurrent, windingCurrent } from "./windingCurrent.ts";
import { FUSE_AMPS, nextRating } from "./words.ts";

/** Beyond this multiple of a rating nothing but a fault explains the load. common-practice. */
const FAULT_LOAD = 2.5;
/** A winding that keeps less of its voltage than this is shorted; the worst of honest loads leave four fifths. from-memory. */
export const LEAST_HELD = 0.5;
/** Into capacitors a half with rectifiers carries more RMS than direct current: up to 2 to 3 times. from-memory. */
const PULSE_ALLOWANCE = 3;
/** A rating holds at the design voltage and allows for the line's swing, which heaters follow: up to a tenth. common-practice. */
const MOST_SWING = 1.1;
/** Share of its rating by which a primary may be exceeded before the fuse is not the question any more. common-practice. */
const PRIMARY_EXCESS = 1.25;
/** A fuse above this multiple of what the transformer is made for protects hardly anything. common-practice: 1.5 to 2.5. */
const FUSE_SHARE = 2.5;

/** One winding in the condition that loads it most. */
export interface WindingLoad extends WindingCurrent {
  winding: WindingSpec;
  condition: string;
  /** The rating as it applies to `amps`; undefined when it is not known. */
  limit: number | undefined;
  /** Load over limit, and the RMS current's where that is beyond what rectifiers explain; undefined without a rating. */
  share: number | undefined;
  /** True when the load is a fault's: far beyond the rating, or the voltage gone. */
  fault: boolean;
}

/** A transformer on the line and the load of its windings. */
export interface TransformerLoad {
  placed: Placed;
  windings: readonly WindingLoad[];
  /** Heat in the wire of all windings in the condition where it is largest, I^2 R. Heat of the core is not counted. */
  heat: { condition: string; watts: number };
}

const kept = new WeakMap<ChassisModel, Map<Life, readonly TransformerLoad[]>>();

/** Load of every transformer whose primary lies on the line, over all powered conditions that can be solved, at the highest line. Kept. */
export function transformerLoads(model: ChassisModel, life: Life): readonly TransformerLoad[] {
  const known = kept.get(model) ?? new Map<Life, readonly TransformerLoad[]>();
  kept.set(model, known);
  const loads = known.get(life) ?? lineTransformers(model, life).map((placed) => loadOf(model, life, placed));
  known.set(life, loads);
  return loads;
}

function lineTransformers(model: ChassisModel, life: Life): Placed[] {
  const { hot, neutral } = lineSide(model, life);
  return allIn(model, life, "transformer").filter(({ state }) => {
    const points = primaryOf(state.windings ?? [])?.points ?? [];
    return points.some((point) => hot.has(point)) && points.some((point) => neutral.has(point));
  });
}

function loadOf(model: ChassisModel, life: Life, placed: Placed): TransformerLoad {
  const worst = new Map<string, WindingLoad>();
  const primaryVolts = primaryOf(placed.state.windings ?? [])?.ratedVolts ?? model.line.designVolts;
  const swing = Math.min(MOST_SWING, Math.max(1, model.line.highVolts / primaryVolts));
  let heat = { condition: "", watts: 0 };
  for (const { condition, solved } of solveAll(model, life, "high")) {
    if (!solved.ok) continue;
    let watts = 0;
    for (const winding of placed.state.windings ?? []) {
      const current = windingCurrent(solved, placed.part.id, winding);
      if (current === undefined) continue;
      watts += current.watts;
      const load = against(winding, condition.id, current, swing);
      const before = worst.get(winding.id);
      if (before === undefined || rank(load) > rank(before)) worst.set(winding.id, load);
    }
    if (watts > heat.watts) heat = { condition: condition.id, watts };
  }
  return { placed, windings: [...worst.values()], heat };
}

const rank = (load: WindingLoad) => (load.fault ? 1e6 : 0) + (load.share ?? load.amps);

function against(winding: WindingSpec, condition: string, current: WindingCurrent, swing: number): WindingLoad {
  const rated = winding.ratedAmps;
  const limit = rated === undefined || rated <= 0 ? undefined : rated / (current.kind === "rms" ? 1 / swing : current.derating);
  const pulses = rated === undefined || current.kind === "rms" ? 0 : current.rmsAmps / (PULSE_ALLOWANCE * rated);
  const direct = limit === undefined ? undefined : current.amps / limit;
  // A wire across a winding passes by the rectifiers: only the RMS current tells.
  const explained = direct === undefined || pulses <= 1 || direct >= pulses;
  const judged: WindingCurrent =
    explained || rated === undefined ? current : { ...current, kind: "past-rectifiers", amps: current.rmsAmps };
  const share = direct === undefined ? undefined : Math.max(direct, pulses > 1 ? pulses : 0);
  const gone = current.held !== undefined && current.held < LEAST_HELD;
  return {
    ...judged,
    winding,
    condition,
    limit: explained || rated === undefined ? limit : PULSE_ALLOWANCE * rated,
    share,
    fault: (share ?? 0) > FAULT_LOAD || gone,
  };
}

/** What the transformers on the line allow of the line current and its fuse. */
export interface PrimaryAllowance {
  /** Rated current of all primaries together; undefined when the papers of one do not give it. */
  ratedAmps: number | undefined;
  /** Largest fuse that still protects them; Infinity when no rating is known. */
  mostFuseAmps: number;
  /** True when the set draws more than its transformer is made for, or a winding is loaded as by a fault: the fuse is not the question then. */
  overdrawn: boolean;
}

/** The fuse to fit for a current: the next usual rating, but none above what the transformer allows. SI. */
export function fuseFor(wantedAmps: number, mostAmps = Number.POSITIVE_INFINITY): number {
  const rating = nextRating(wantedAmps, FUSE_AMPS);
  return rating <= mostAmps ? rating : (FUSE_AMPS.findLast((usual) => usual <= mostAmps) ?? mostAmps);
}

/** @param steadyAmps steady RMS current from the line */
export function primaryAllowance(model: ChassisModel, life: Life, steadyAmps: number): PrimaryAllowance {
  const loads = transformerLoads(model, life);
  const rated = loads.map(({ placed }) => primaryOf(placed.state.windings ?? [])?.ratedAmps);
  const known = rated.filter((amperes) => amperes !== undefined);
  const ratedAmps = loads.length === 0 || known.length < rated.length ? undefined : known.reduce((sum, amperes) => sum + amperes, 0);
  return {
    ratedAmps,
    mostFuseAmps: ratedAmps === undefined ? Number.POSITIVE_INFINITY : FUSE_SHARE * ratedAmps,
    overdrawn:
      (ratedAmps !== undefined && steadyAmps > PRIMARY_EXCESS * ratedAmps) ||
      loads.some(({ windings }) => windings.some(({ fault }) => fault)),
  };
}
