import type { Path } from "./path.ts";
import type { Place, Placed, Span } from "./place.ts";

/** An object put together from cells, each value with the cell that it came from. */
export interface PlacedObject extends Placed {
  value: Record<string, unknown>;
}

/** An empty object whose own place is `span`. */
export function placedObject(span: Span, doubtful = false): PlacedObject {
  return { value: {}, place: { value: span, members: new Map(), doubtful } };
}

/**
 * Puts a value under a path of property names, making the objects on the way; these get the place of the first value put into
 * them. Lists are put whole, with a span for each item.
 */
export function put(target: PlacedObject, path: Path, value: unknown, span: Span, items: readonly Span[] = []): void {
  let object = target.value;
  let place: Place = target.place;
  for (const [index, step] of path.entries()) {
    const last = index === path.length - 1;
    let member = place.members.get(step);
    if (member === undefined) {
      member = { value: span, key: span, members: new Map() };
      place.members.set(step, member);
      object[step] = last ? value : {};
    }
    place = member;
    if (!last) object = object[step] as Record<string, unknown>;
  }
  for (const [index, item] of items.entries()) place.members.set(index, { value: item, members: new Map() });
}
