import type { ChassisModel, Life, Part } from "../model/index.ts";

/** A source whose two points are joined without resistance. */
export interface Short {
  /** Part id of a battery; "line" for the outlet. */
  source: string;
  points: readonly [string, string];
  /** The parts that join the points one after another: wires, cords. */
  by: readonly Part[];
}

interface Join {
  points: readonly [string, string];
  part?: Part;
}

/** Sources that the wiring of a life shorts: the line and every battery. Shorts through a resistance, however low, are not among them. */
export function shortedSources(model: ChassisModel, life: Life): Short[] {
  const joins = joinsOf(model, life);
  const { line } = model;
  const sources: [string, string, string][] = [["line", line.hot, line.neutral]];
  for (const part of model.parts.values()) {
    const { present, pins } = part.lives[life];
    if (part.kind === "battery" && present && pins.a !== undefined && pins.b !== undefined) sources.push([part.id, pins.a, pins.b]);
  }
  return sources.flatMap(([source, from, to]) => {
    const by = pathOf(joins, from, to);
    return by === undefined || by.length === 0 ? [] : [{ source, points: [from, to], by }];
  });
}

function joinsOf(model: ChassisModel, life: Life): Join[] {
  const joins: Join[] = [];
  const { neutral, earth } = model.line;
  // The panel joins neutral and earth, whatever the set does.
  if (model.points.has(neutral) && model.points.has(earth)) joins.push({ points: [neutral, earth] });
  for (const part of model.parts.values()) {
    const { present, pins, earthed } = part.lives[life];
    if (!present) continue;
    const pairs =
      part.kind === "wire"
        ? [["a", "b"]]
        : part.kind === "cord"
          ? ["hot", "neutral", ...(earthed === true ? ["earth"] : [])].map((conductor) => [`${conductor}-in`, `${conductor}-out`])
          : [];
    for (const [a = "", b = ""] of pairs) {
      const [from, to] = [pins[a], pins[b]];
      if (from !== undefined && to !== undefined) joins.push({ points: [from, to], part });
    }
  }
  return joins;
}

/** The fewest parts that lead from one point to another; undefined when none do. */
function pathOf(joins: readonly Join[], from: string, to: string): Part[] | undefined {
  const byPoint = new Map<string, [string, Join][]>();
  for (const join of joins) {
    const [a, b] = join.points;
    byPoint.set(a, [...(byPoint.get(a) ?? []), [b, join]]);
    byPoint.set(b, [...(byPoint.get(b) ?? []), [a, join]]);
  }
  const reached = new Map<string, readonly Part[]>([[from, []]]);
  for (const [point, parts] of reached) {
    if (point === to) return [...new Set(parts)];
    for (const [next, { part }] of byPoint.get(point) ?? [])
      if (!reached.has(next)) reached.set(next, part === undefined ? parts : [...parts, part]);
  }
  return undefined;
}
