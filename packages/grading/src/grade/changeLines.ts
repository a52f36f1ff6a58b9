import { formatQuantity } from "@underchassis/calc";
import type { Report } from "@underchassis/dataset";
import { LINE } from "../compile/compile.ts";
import type { ChassisModel, Condition, Life, Part, PartState, Situation, Solved } from "../model/index.ts";

type ChangeLine = Report["changes"][number];
type Effect = ChangeLine["effects"][number];

/** Effects smaller than this share of the value are not worth a row. */
const NOTICEABLE = 0.002;

/** Before and after each change, one change at a time: the chassis as it stands against the same chassis with that part as it was found. */
export function changeLines(model: ChassisModel): ChangeLine[] {
  return [...model.parts.values()].filter((part) => part.change !== "none").map((part) => changeLine(model, part));
}

function changeLine(model: ChassisModel, part: Part): ChangeLine {
  const planned = part.change === "planned";
  const after: Life = planned ? "planned" : "restored";
  const now = part.lives[after];
  const was = part.lives.found;
  const what = !was.present
    ? "added"
    : !now.present
      ? "removed"
      : part.change === "moved" || part.asWritten.fitted === "moved"
        ? "moved"
        : "replaced";
  return {
    part: part.name,
    title: part.title,
    what,
    from: was.present ? describeState(part, was, part.asWritten.marked) : "nothing",
    to: now.present ? (what === "moved" ? placeOf(now) : (part.asWritten.fitted ?? describeState(part, now, undefined))) : "nothing",
    ...(part.changeWhy === undefined ? {} : { why: part.changeWhy }),
    planned,
    effects: electricallySame(was, now) ? [] : effectsOf(model, part, after),
  };
}

/** Whether a change makes no difference to a simulation: same value within a percent, same place, same device. */
function electricallySame(was: PartState, now: PartState): boolean {
  if (was.present !== now.present || JSON.stringify([was.pins, was.windings]) !== JSON.stringify([now.pins, now.windings])) return false;
  const near = (a: number | undefined, b: number | undefined) =>
    a === b || (a !== undefined && b !== undefined && Math.abs(a - b) <= 0.01 * Math.abs(a));
  return (
    near(was.main?.value, now.main?.value) &&
    near(was.dcr?.value, now.dcr?.value) &&
    near(was.leak?.value, now.leak?.value) &&
    was.type === now.type &&
    was.earthed === now.earthed
  );
}

function effectsOf(model: ChassisModel, part: Part, life: Life): Effect[] {
  const effects: Effect[] = [];
  for (const condition of conditionsFor(model, part)) {
    const situation: Situation = { life, condition: condition.id, line: "actual" };
    const pair: Pair = {
      after: model.solve(situation),
      coarseAfter: model.solve({ ...situation, coarse: true }),
      coarseBefore: model.solve({ ...situation, coarse: true, revert: part.id }),
    };
    effects.push(...pointEffects(model, part, life, condition, pair), ...elementEffects(model, part, condition, pair));
  }
  return effects;
}

/** The chassis as it stands, and the difference that one part makes, from two solutions with fewer steps a period. */
interface Pair {
  after: Solved;
  coarseAfter: Solved;
  coarseBefore: Solved;
}

/** What a figure was without the change and is with it. */
function beforeAndAfter(pair: Pair, read: (solved: Solved) => number | null): [number | null, number | null] {
  const [after, coarseAfter, coarseBefore] = [pair.after, pair.coarseAfter, pair.coarseBefore].map(read);
  if (after === null || after === undefined) return [null, null];
  if (coarseAfter === null || coarseAfter === undefined || coarseBefore === null || coarseBefore === undefined) return [null, after];
  // The error of the coarse steps is a share of the value, the same in both.
  return [coarseAfter === 0 ? after + coarseBefore : (after * coarseBefore) / coarseAfter, after];
}

/** Operating always; standby for what a standby switch or the resistor across it does. */
function conditionsFor(model: ChassisModel, part: Part): Condition[] {
  const wanted = part.duty?.startsWith("standby") === true ? ["standby", "operating"] : ["operating"];
  return wanted.flatMap((id) => model.conditions.get(id) ?? []);
}

function pointEffects(model: ChassisModel, part: Part, life: Life, condition: Condition, pair: Pair): Effect[] {
  const points = new Set([...Object.values(part.lives[life].pins), ...Object.values(part.lives.found.pins)]);
  const stage = model.stages.find(({ id }) => id === part.stage);
  for (const [id, point] of Object.entries(stage?.points ?? {})) if (/b-plus|output|bias/.test(id)) points.add(point);
  points.delete(model.reference);
  const effects: Effect[] = [];
  for (const point of points) {
    if (carriesAlternating(pair.after, point) || carriesAlternating(pair.coarseBefore, point)) continue;
    for (const [label, quantity] of [
      [`${point}, DC`, "dc-volts"],
      [`${point}, ripple peak to peak`, "ripple-volts"],
    ] as const) {
      const read = (solved: Solved): number | null => {
        if (!solved.ok) return null;
        const name = solved.compiled.pointOf(point);
        return name === undefined ? null : solved.steady.read({ quantity, from: name, to: solved.compiled.network.reference });
      };
      // Differences of microvolts between two solutions are arithmetic, not physics; of nanovolts, so is the voltage itself.
      const floor = quantity === "dc-volts" ? 0.01 : 0.001;
      const [a, b] = beforeAndAfter(pair, read).map((volts) => (volts !== null && Math.abs(volts) < 1e-6 * floor ? 0 : volts)) as [
        number | null,
        number | null,
      ];
      if (noticeable(a, b, floor)) effects.push({ label, unit: "V", condition: condition.id, before: a, after: b });
    }
  }
  return effects;
}

/** Points of the line side and of windings: their direct voltage and "ripple" say nothing. */
function carriesAlternating(solved: Solved, point: string): boolean {
  const name = solved.ok ? solved.compiled.pointOf(point) : undefined;
  const figures = solved.ok && name !== undefined ? solved.steady.points.get(name) : undefined;
  return figures !== undefined && figures.acRmsVolts > Math.max(0.5, Math.abs(figures.meanVolts));
}

/** Peak and mean current of each rectifier, and the line current. */
function elementEffects(model: ChassisModel, part: Part, condition: Condition, pair: Pair): Effect[] {
  const { after } = pair;
  const effects: Effect[] = [];
  const push = (label: string, element: string, key: "maxAmps" | "meanAmps" | "rmsAmps", limit?: number, limitSource?: string) => {
    const read = (solved: Solved): number | null => (solved.ok ? (solved.steady.elements.get(element)?.[key] ?? null) : null);
    const [a, b] = beforeAndAfter(pair, read);
    if (!noticeable(a, b, 1e-4)) return;
    effects.push({
      label,
      unit: "A",
      condition: condition.id,
      before: a,
      after: b,
      ...(limit === undefined ? {} : { limit }),
      ...(limitSource === undefined ? {} : { limitSource }),
    });
  };
  if (after.ok) {
    const seen = new Set<string>();
    for (const [id, origin] of after.compiled.origins) {
      const other = model.parts.get(origin.part);
      if (other?.kind !== "rectifier" || seen.has(origin.part)) continue;
      seen.add(origin.part);
      const limits = other.lives.restored.limits;
      push(`${other.name}, peak current per plate`, id, "maxAmps", limits?.peakAmps, limits?.source);
    }
    if (part.duty !== "coupling") push("line current, RMS", LINE, "rmsAmps");
  }
  return effects;
}

function noticeable(before: number | null, after: number | null, floor: number): boolean {
  if (before === null || after === null) return false;
  return Math.abs(after - before) > Math.max(floor, NOTICEABLE * Math.max(Math.abs(before), Math.abs(after)));
}

function describeState(part: Part, state: PartState, written: string | undefined): string {
  const measured = part.measured !== undefined && state.main?.from === "measurement" ? `, measured ${part.measured.asWritten}` : "";
  if (written !== undefined) return `${written}${measured}`;
  if (state.type !== undefined) return state.type;
  if (state.main !== undefined) {
    const dimension =
      part.kind === "capacitor" ? "capacitance" : part.kind === "inductor" ? "inductance" : part.kind === "fuse" ? "current" : "resistance";
    return formatQuantity(state.main.value, dimension);
  }
  return part.kind;
}

function placeOf(state: PartState): string {
  return `between ${Object.values(state.pins).join(" and ")}`;
}
