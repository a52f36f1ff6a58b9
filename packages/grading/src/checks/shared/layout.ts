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

/** Pairs of points that a cord or wire joins. */
function joints({ part, state }: Placed): (readonly [string, string])[] {
  if (part.kind === "wire") {
    const ends = endsOf(state);
    return ends === undefined ? [] : [ends];
  }
  if (part.kind !== "cord") return [];
  return (state.earthed === true ? ["hot", "neutral", "earth"] : ["hot", "neutral"]).flatMap((conductor) => {
    const [outer, inner] = [state.pins[`${conductor}-in`], state.pins[`${conductor}-out`]];
    return outer === undefined || inner === undefined ? [] : [[outer, inner] as const];
  });
}

/**
 * Points that hang together with a starting point through wires, cords and the parts that `through` lets pass, each with the
 * parts on the way to it.
 */
export function reach(model: ChassisModel, life: Life, from: string, through: (placed: Placed) => boolean, stopAt: ReadonlySet<string> = new Set()): Map<string, Placed[]> {
  const links = allIn(model, life).flatMap((placed) => {
    const wired = joints(placed).map((pair) => ({ pair, via: undefined as Placed | undefined }));
    const ends = placed.part.kind === "wire" || placed.part.kind === "cord" || !through(placed) ? undefined : endsOf(placed.state);
    return ends === undefined ? wired : [...wired, { pair: ends, via: placed }];
  });
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
