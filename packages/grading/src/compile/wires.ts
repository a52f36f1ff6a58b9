/** Points joined without resistance: wires, a cord's conductors, a building's neutral-to-earth link. */
export class Wires {
  readonly #parent = new Map<string, string>();

  /** Joins two points. The one that sorts first by `rank` gives the name. */
  join(a: string, b: string): void {
    const [first, second] = [this.find(a), this.find(b)];
    if (first !== second) this.#parent.set(second, first);
  }

  /** The name under which the network knows a point. */
  find(point: string): string {
    let name = point;
    for (let parent = this.#parent.get(name); parent !== undefined; parent = this.#parent.get(name)) name = parent;
    return name;
  }
}
