import type { ChassisModel, Life, Part, PartKind, PartState } from "../../model/index.ts";

/** A part as it is in one life. */
export interface Placed {
  part: Part;
  state: PartState;
}

/** Every part that is there in a life, planned or not: what surrounds a part that is judged. */
export function allIn(model: ChassisModel, life: Life, ...kinds: PartKind[]): Placed[] {
  return [...model.parts.values()].flatMap((part) => {
    const state = part.lives[life];
    return state.present && (kinds.length === 0 || kinds.includes(part.kind)) ? [{ part, state }] : [];
  });
}

/** The lives in which a question about the whole chassis is put: as it stands, and as planned when a plan touches such a part. */
export function livesTouching(model: ChassisModel, ...kinds: PartKind[]): Life[] {
  const planned = [...model.parts.values()].some((part) => part.change === "planned" && kinds.includes(part.kind));
  return planned ? ["restored", "planned"] : ["restored"];
}

/** The two points of a two-lead part; undefined when one is missing. */
export function endsOf(state: PartState): readonly [string, string] | undefined {
  const { a, b } = state.pins;
  return a === undefined || b === undefined ? undefined : [a, b];
}

/** Pairs of points that are one: wires, cords, and places where a series part is missing. */
function joints(model: ChassisModel, life: Life): (readonly [string, string])[] {
  const pairs: (readonly [string, string])[] = [...model.joins];
  for (const part of model.parts.values()) {
    const state = part.lives[life];
    const ends = endsOf(state);
    const missing = part.joinedWhenAbsent && !state.present && state.open === undefined;
    if (ends !== undefined && (missing || (part.kind === "wire" && state.present))) pairs.push(ends);
    if (part.kind !== "cord" || !state.present) continue;
    for (const conductor of state.earthed === true ? ["hot", "neutral", "earth"] : ["hot", "neutral"]) {
      const [outer, inner] = [state.pins[`${conductor}-in`], state.pins[`${conductor}-out`]];
      if (outer !== undefined && inner !== undefined) pairs.push([outer, inner]);
    }
  }
  return pairs;
}

/**
 * Points that hang together with a starting point through wires, cords and the parts that `through` lets pass, each with the
 * parts on the way to it.
 */
export function reach(
  model: ChassisModel,
  life: Life,
  from: string,
  through: (placed: Placed) => boolean,
  stopAt: ReadonlySet<string> = new Set(),
): Map<string, Placed[]> {
  const links: { pair: readonly [string, string]; via?: Placed }[] = joints(model, life).map((pair) => ({ pair }));
  for (const placed of allIn(model, life)) {
    const ends = placed.part.kind === "wire" || placed.part.kind === "cord" || !through(placed) ? undefined : endsOf(placed.state);
    if (ends !== undefined) links.push({ pair: ends, via: placed });
  }
  const found = new Map<string, Placed[]>([[from, []]]);
  const queue = [from];
  for (let point = queue.shift(); point !== undefined; point = queue.shift()) {
    const way = found.get(point) ?? [];
    for (const { pair, via } of links) {
      const next = pair[0] === point ? pair[1] : pair[1] === point ? pair[0] : undefined;
      if (next === undefined || found.has(next) || stopAt.has(next)) continue;
      found.set(next, via === undefined ? way : [...way, via]);
      queue.push(next);
    }
  }
  return found;
}

/**
 * One name for all points that are joined by wires, the cord, or the place of a missing series part.
 *
 * @returns a function from any point's name to the one that stands for all joined to it
 */
export function pointNames(model: ChassisModel, life: Life): (point: string) => string {
  const names = new Map<string, string>();
  for (const pair of joints(model, life)) {
    for (const point of pair) {
      if (names.has(point)) continue;
      for (const joined of reach(model, life, point, () => false).keys()) names.set(joined, point);
    }
  }
  return (point) => names.get(point) ?? point;
}

/** A part with its pins under the names that joined points share. */
function named({ part, state }: Placed, nameOf: (point: string) => string): Placed {
  const pins = Object.fromEntries(Object.entries(state.pins).map(([pin, point]) => [pin, nameOf(point)]));
  const windings = state.windings?.map((winding) => ({ ...winding, points: winding.points.map(nameOf) }));
  return { part, state: { ...state, pins, ...(windings === undefined ? {} : { windings }) } };
}

/** As `allIn`, with joined points under one name. */
export function joinedIn(model: ChassisModel, life: Life, ...kinds: PartKind[]): Placed[] {
  const nameOf = pointNames(model, life);
  return allIn(model, life, ...kinds).map((placed) => named(placed, nameOf));
}
